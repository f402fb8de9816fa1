package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import quarterturn.lesson.bench.BenchDialogue;
import quarterturn.lesson.bench.BenchWords;
import quarterturn.lesson.bench.Gate;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Question;
import quarterturn.session.Refused;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;

/** A bench in a lesson as plain lines: the session, and what the lesson puts before its prompts. */
public final class LessonLine implements Between {
  private final LessonSession session;
  private final String again;
  private final LineSource in;
  private final Paper paper;
  private final LessonTalk talk;
  private final BenchDialogue dialogue;

  /** The text that was said last, so that what stays is said once. */
  private List<String> said = List.of();

  /** The text that everybody was given time to think about. */
  private List<String> pondered = List.of();

  private LessonLine(LessonSession session, String again, LineSource in, PrintWriter out) {
    this.session = session;
    this.again = again;
    this.in = in;
    this.paper = new Paper(out, in);
    this.talk = new LessonTalk(session, in, paper);
    this.dialogue = new BenchDialogue(session);
  }

  /**
   * Plays a bench's sessions until they end or the bench is left.
   *
   * @param again the command by which the bench goes on later
   * @return the exit status
   */
  public static int run(
      LessonSession session, String again, LineSource in, PrintWriter out, Dates dates)
      throws IOException, Unreadable {
    LessonLine line = new LessonLine(session, again, in, out);
    try (LessonWatch watch = LessonWatch.over(session, in::aside)) {
      while (true) {
        int status = LineFace.run(session, in, out, dates, line);
        boolean done = status == ExitStatus.DONE && session.prompt().ended();
        if (!done || watch.broke() != null) {
          return status;
        }
        if (!session.next()) {
          line.paper.say("Everything that was planned is done at this bench. Thank you.");
          return status;
        }
        line.paper.say(List.of("", "This procedure is done here. The next one begins."));
      }
    }
  }

  @Override
  public Then before() throws IOException, LineSource.Interrupted {
    boolean something = false;
    while (!talk.leaving()) {
      boolean opened = dialogue.look();
      Question question = dialogue.question();
      if (question == null) {
        List<String> news = opened ? dialogue.news() : List.of();
        if (!news.isEmpty()) {
          say(news);
        }
        said = List.of();
        return something || !news.isEmpty() ? Then.SAID : Then.GO_ON;
      }
      something = true;
      boolean fresh = introduce(question);
      if (question instanceof Question.Asked asked) {
        ask(asked);
      } else if (question instanceof Question.Hold) {
        waitForIt(question, fresh);
      } else if (dialogue.over()) {
        return Then.LEAVE;
      } else {
        take("");
      }
    }
    return Then.LEAVE;
  }

  private void say(List<String> lines) {
    paper.say("");
    paper.say(lines.stream().map(Printable::of).toList());
  }

  /** Says what is new of a question's text; false where all of it was said. */
  private boolean introduce(Question question) {
    List<String> lines = question.lines();
    int both = Math.min(lines.size(), said.size());
    boolean goesOn = lines.subList(0, both).equals(said.subList(0, both));
    List<String> fresh = goesOn ? lines.subList(both, lines.size()) : lines;
    if (!fresh.isEmpty()) {
      say(fresh);
    }
    said = lines;
    return !fresh.isEmpty();
  }

  private void ask(Question.Asked asked) throws IOException, LineSource.Interrupted {
    if (asked.ponder() && !asked.lines().equals(pondered)) {
      pondered = asked.lines();
      paper.say("(A moment to think: " + Gate.QUESTION_PAUSE.toSeconds() + " seconds.)");
      in.pause(Gate.QUESTION_PAUSE);
    }
    String typed = talk.line(asked.asks() + " > ", asked.help(), asked.hidden());
    if (typed != null) {
      take(typed);
    }
  }

  private void take(String typed) throws IOException {
    try {
      Dialogue.Taken taken = dialogue.take(typed);
      if (!taken.brief().isEmpty()) {
        paper.say(Printable.of(taken.brief()));
      }
    } catch (Refused | NotUnderstood e) {
      // As when a stop came first: what keeps the bench is said next.
      paper.say("Not taken: " + e.getMessage());
    }
  }

  private void waitForIt(Question held, boolean fresh) throws IOException, LineSource.Interrupted {
    if (!fresh) {
      paper.say("Still waiting for the teacher.");
    }
    if (in.typedByHand()) {
      talk.line("waiting; Enter looks again > ", "Enter: look again.", false);
      return;
    }
    while (held.equals(dialogue.question())) {
      in.pause(Duration.ofSeconds(1));
      dialogue.look();
    }
    if (!(dialogue.question() instanceof Question.Hold)) {
      paper.say("The teacher lets this bench go on.");
    }
  }

  @Override
  public boolean takes(String line) throws IOException {
    return talk.takes(line);
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
  public String kept() {
    return session.lesson().over()
        ? "Everything is kept."
        : "Everything is kept. Go on later with: " + again;
  }
}
