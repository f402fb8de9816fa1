package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.BenchDialogue;
import quarterturn.lesson.student.BenchWords;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.DisplacedException;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/**
 * Plays a bench in a lesson as plain lines: the session, and what the lesson puts before its
 * prompts.
 */
public final class LessonLine implements Between {
  private static final List<String> WORDS = List.of("stop", "who", "come", "gone", "quit");

  private static final String TYPE = " > ";
  private static final String WAITING = "waiting > ";

  private final LessonSession session;
  private final String again;
  private final LineSource in;
  private final Paper paper;
  private final BenchDialogue dialogue;

  private final DialogueLines lines;

  private LessonLine(LessonSession session, String again, LineSource in, PrintWriter out) {
    this.session = session;
    this.again = again;
    this.in = in;
    this.paper = new Paper(out, in);
    this.dialogue = new BenchDialogue(session);
    this.lines = new DialogueLines(dialogue, in, paper);
  }

  /** Prints what stands at the top of a bench's page. */
  public static void greet(String welcome, Typing typing) {
    new Paper(typing.out(), typing.source()).say(Printable.of(welcome));
  }

  /**
   * Plays a bench's sessions until they end or the bench is left.
   *
   * @param again the command by which the bench goes on later
   * @return the exit status
   */
  public static int run(
      LessonSession session, String again, LineSource in, PrintWriter out, Dates dates)
      throws IOException, UnreadableException {
    LessonLine line = new LessonLine(session, again, in, out);
    while (true) {
      int status = LineFace.run(session, in, out, dates, line);
      if (status != ExitStatus.DONE || !session.prompt().ended()) {
        return status;
      }
      if (!session.next()) {
        line.paper.say(BenchWords.DONE);
        return status;
      }
      line.paper.say(List.of("", "This procedure is done here. The next one begins."));
    }
  }

  @Override
  public Then before() throws IOException, LineSource.StopKeyException {
    boolean something = false;
    boolean opened = false;
    boolean stays = true;
    while (stays && !dialogue.left()) {
      opened |= dialogue.look();
      Question question = dialogue.question();
      if (question == null) {
        List<String> news = opened ? dialogue.news() : List.of();
        if (!news.isEmpty()) {
          paper.say("");
          paper.say(news.stream().map(Printable::of).toList());
        }
        lines.forget();
        return something || !news.isEmpty() ? Then.SAID : Then.GO_ON;
      }
      something = true;
      stays = ask(question);
    }
    return Then.LEAVE;
  }

  /** Asks a question or tells what it tells; false where the bench is left. */
  private boolean ask(Question question) throws IOException, LineSource.StopKeyException {
    lines.introduce(question);
    if (question instanceof Question.Asked asked) {
      String early = lines.ponders(asked) ? thinking(asked) : null;
      if (early != null) {
        return does(early, asked);
      }
      return changed() || line(asked.asks() + TYPE, asked, seen(asked));
    }
    if (question instanceof Question.Hold) {
      return waitForIt(question);
    }
    if (dialogue.over()) {
      return false;
    }
    lines.take("");
    return true;
  }

  /** Gives everybody time to think; a line that was typed meanwhile waits for it, if it can. */
  private @Nullable String thinking(Question.Asked asked)
      throws IOException, LineSource.StopKeyException {
    long until = System.nanoTime() + Gate.QUESTION_PAUSE.toNanos();
    BooleanSupplier over = () -> System.nanoTime() - until >= 0 || changed();
    if (!in.typedByHand()) {
      return in.await(Gate.QUESTION_PAUSE, this::changed, BenchWords::urgent);
    }
    try {
      String line = in.readLine(asked.asks() + TYPE, WORDS, seen(asked), over);
      if (line != null && !BenchWords.urgent(line, false)) {
        in.pause(Duration.ofNanos(Math.max(0, until - System.nanoTime())), this::changed);
      }
      return line == null ? "quit" : line;
    } catch (LineSource.ChangedException e) {
      return null;
    }
  }

  private LineSource.Seen seen(Question.Asked asked) {
    return asked.hidden()
        ? LineSource.Seen.MASKED
        : dialogue.secret() ? LineSource.Seen.CLEARED : LineSource.Seen.SHOWN;
  }

  /** Reads a line and does what it asks for; false where the bench is left. */
  private boolean line(String asks, Question question, LineSource.Seen seen)
      throws IOException, LineSource.StopKeyException {
    try {
      return does(in.readLine(asks, WORDS, seen, this::changed), question);
    } catch (LineSource.ChangedException e) {
      return true;
    }
  }

  private boolean does(@Nullable String typed, Question question) throws IOException {
    String word = typed == null ? "" : typed.strip().toLowerCase(Locale.ROOT);
    boolean waits = question instanceof Question.Hold;
    boolean leaves = word.equals("quit") || word.equals("exit");
    if (typed == null || (leaves && !in.typedByHand())) {
      return false;
    }
    if (leaves) {
      dialogue.leave();
    } else if (word.equals("?") || (waits && word.equals("help"))) {
      paper.say(waits ? "It goes on by itself." : question.help());
      paper.say(BenchWords.HELP);
      paper.say("quit: leave in order.");
    } else {
      String asks = question instanceof Question.Asked asked ? asked.asks() + TYPE : "";
      keep(typed, asks);
      lines.take(typed.strip());
    }
    return true;
  }

  /** Keeps what stood on a line before a stop, so that it can be gone on with. */
  private void keep(String typed, String asks) {
    String before = dialogue.beforeStop(typed);
    if (!before.isEmpty() && (asks.isEmpty() || !in.begin(asks, before))) {
      paper.say("Only the stop was taken. Type what stood before it again, once you go on.");
    }
  }

  private boolean waitForIt(Question held) throws IOException, LineSource.StopKeyException {
    if (in.typedByHand()) {
      boolean stays = line(WAITING, held, LineSource.Seen.SHOWN);
      if (!goesOn() && held.equals(dialogue.question())) {
        paper.say("Still waiting for the teacher.");
      }
      return stays;
    }
    String typed = in.await(this::changed, BenchWords::urgent);
    goesOn();
    return typed == null || does(typed, held);
  }

  /** Says where the bench goes on; whether it does. */
  private boolean goesOn() throws IOException {
    dialogue.look();
    boolean on = !(dialogue.question() instanceof Question.Hold) && !dialogue.over();
    if (on) {
      paper.say("The teacher lets this bench go on.");
    }
    return on;
  }

  @Override
  public boolean changed() {
    return dialogue.changed();
  }

  @Override
  public @Nullable String meanwhile(LineSource typing, Duration time)
      throws IOException, LineSource.StopKeyException, LineSource.ChangedException {
    long began = System.nanoTime();
    BooleanSupplier over = () -> System.nanoTime() - began >= time.toNanos() || changed();
    String typed;
    if (typing.typedByHand()) {
      try {
        String line = typing.readLine(WAITING, WORDS, LineSource.Seen.SHOWN, over);
        typed = line == null ? "quit" : line;
      } catch (LineSource.ChangedException e) {
        typed = null;
      }
    } else {
      typed = typing.await(over, BenchWords::urgent);
    }
    if (typed == null && changed()) {
      throw new LineSource.ChangedException();
    }
    return typed;
  }

  @Override
  public boolean takes(String line, String asks) throws IOException {
    try {
      keep(line, asks);
      Dialogue.Taken taken = dialogue.word(line);
      if (taken != null) {
        paper.say(taken.told());
      }
      return taken != null;
    } catch (RefusedException e) {
      paper.say("Not taken: " + e.getMessage());
      return true;
    }
  }

  @Override
  public boolean ahead() {
    return false;
  }

  @Override
  public List<String> words() {
    return BenchWords.WORDS;
  }

  @Override
  public List<String> help() {
    return BenchWords.HELP;
  }

  @Override
  public String stopped(DisplacedException record) {
    return "Stopped: " + record.goOn("Go on with: " + again).getMessage();
  }

  @Override
  public String kept() {
    return BenchWords.later(session.lesson(), again);
  }
}
