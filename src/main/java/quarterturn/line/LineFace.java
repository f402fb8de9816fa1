package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.line.LineSource.Interrupted;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Role;
import quarterturn.quick.Given;
import quarterturn.quick.Mistyped;
import quarterturn.quick.QuickLine;
import quarterturn.quick.Supply;
import quarterturn.quick.Terms;
import quarterturn.report.Dates;
import quarterturn.report.StageTable;
import quarterturn.report.TrailLine;
import quarterturn.report.TurnWords;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;
import quarterturn.unit.Printable;

/** The session as plain lines that a screen reader can follow. */
public final class LineFace {
  /** Ended in order, or left in order. */
  public static final int DONE = 0;

  /** The instrument goes to a repairer. */
  public static final int HAND_OVER = 1;

  /** Something could not be read or written. */
  public static final int FAILED = 2;

  /** Stopped by the key that stops a program, after leaving in order. */
  public static final int INTERRUPTED = 130;

  private static final String TYPE = "> ";

  /** Common practice, no source: the step of a set of leaves, put around a single number. */
  private static final double GAUGE_MM = 0.05;

  private final Bench bench;
  private final LineSource in;
  private final Paper paper;
  private final Dates dates;

  /** Readings typed ahead on one line, in the order they are asked for. */
  private final Deque<Answer> ahead = new ArrayDeque<>();

  /** What was typed ahead by its name. */
  private final Supply supply = new Supply();

  private LineFace(Bench bench, LineSource in, PrintWriter out, Dates dates) {
    this.bench = bench;
    this.in = in;
    this.paper = new Paper(out, in);
    this.dates = dates;
  }

  /** Plays {@code bench} until it ends or the person leaves, and returns the exit status. */
  public static int run(Bench bench, LineSource in, PrintWriter out, Dates dates) {
    LineFace face = new LineFace(bench, in, out, dates);
    try {
      return face.play();
    } catch (IOException e) {
      face.paper.say(
          "Stopped: the record could not be read or written ("
              + e.getMessage()
              + "). Everything answered before is kept.");
      return FAILED;
    }
  }

  private int play() throws IOException {
    try {
      open();
      return talk();
    } catch (Interrupted e) {
      leave();
      return INTERRUPTED;
    }
  }

  private void open() {
    Overview overview = bench.overview();
    paper.say(
        List.of(
            overview.stage() + ", " + overview.instrument() + ".",
            "Session " + overview.session() + ". Type ? to hear what can be typed."));
  }

  private int talk() throws IOException, Interrupted {
    boolean show = true;
    while (true) {
      Prompt prompt = bench.prompt();
      Given given = supply.isEmpty() ? null : supply.take(prompt, terms());
      if (given != null) {
        show = give(given.answer(), prompt);
        continue;
      }
      if (show) {
        paper.say(PromptLines.of(prompt, bench.overview(), bench.now(), dates));
      }
      if (prompt.ended()) {
        paper.say(record());
        return prompt instanceof Prompt.HandOver ? HAND_OVER : DONE;
      }
      Reply reply = next(prompt);
      if (reply == null || (reply == Reply.Command.QUIT && sure())) {
        leave();
        return DONE;
      }
      show = act(reply, prompt);
    }
  }

  /** What is typed next, or was typed ahead; null at the end of input. */
  private @Nullable Reply next(Prompt prompt) throws IOException, Interrupted {
    if (!ahead.isEmpty()) {
      if (fits(ahead.element(), prompt)) {
        return Reply.Give.one(ahead.remove());
      }
      ahead.clear();
      paper.say("The other readings on that line are not used: something else comes first.");
    }
    List<String> words = new ArrayList<>(Ask.words(prompt));
    if (bench.overview().role() == Role.TECHNICIAN) {
      words.addAll(terms().words());
    }
    String line = in.readLine(TYPE, words);
    Reply reply = line == null ? null : named(line, prompt);
    return reply instanceof Reply.Amount amount ? felt(amount) : reply;
  }

  /** What a line gives by name, or what it says to the prompt at hand. */
  private Reply named(String line, Prompt prompt) {
    Reply own = ReplyReader.read(line, prompt, bench.now());
    if (!(own instanceof Reply.Bad) || !QuickLine.names(line, terms())) {
      return own;
    }
    try {
      return new Reply.Named(QuickLine.read(line, terms()));
    } catch (Mistyped e) {
      return new Reply.Marked(e.lines(line).stream().map(Printable::of).toList());
    }
  }

  private Terms terms() {
    Overview now = bench.overview();
    Kind kind = now.kind();
    // Somebody who is led through it sees each question before it is answered.
    Map<String, List<String>> choices = now.role() == Role.TECHNICIAN ? bench.choices() : Map.of();
    return new Terms(kind == null ? List.of() : kind.strings(), choices, GAUGE_MM);
  }

  private static boolean fits(Answer answer, Prompt prompt) {
    if (!(prompt instanceof Prompt.Measure measure)) {
      return false;
    }
    return answer instanceof Answer.CannotMeasure
        || measure.quantity().bracket() == answer instanceof Answer.Measured;
  }

  /** Asks how a turn felt. Enter is no answer to it. */
  private @Nullable Reply felt(Reply.Amount amount) throws IOException, Interrupted {
    paper.say("Rod: " + TurnWords.done(amount.turn()) + ".");
    boolean show = true;
    while (true) {
      if (show) {
        paper.say(PromptLines.feels());
      }
      String line = in.readLine(TYPE, Ask.feels());
      if (line == null) {
        return null;
      }
      Feel feel = TurnReader.feel(line);
      if (feel != null) {
        return Reply.Give.one(new Answer.Turned(amount.turn(), feel));
      }
      String word = line.strip().toLowerCase(Locale.ROOT);
      if (word.equals("back")) {
        return Reply.Command.AGAIN;
      }
      Reply command = ReplyReader.command(word);
      if (command == Reply.Command.QUIT) {
        return command;
      }
      show = command == Reply.Command.AGAIN || command == Reply.Command.HELP;
      if (!show) {
        paper.say("Type 1 to 6 or a word: " + String.join(", ", Ask.feels()) + ".");
      }
    }
  }

  /** Does what was asked; true where the prompt is to be shown afterwards. */
  private boolean act(Reply reply, Prompt prompt) throws IOException, Interrupted {
    if (reply instanceof Reply.Give give) {
      ahead.addAll(give.answers().subList(1, give.answers().size()));
      return give(give.answers().get(0), prompt);
    }
    if (reply instanceof Reply.Named named) {
      return named(named, prompt);
    }
    if (reply instanceof Reply.Stay && prompt instanceof Prompt.Wait wait) {
      return stay(wait);
    }
    if (reply instanceof Reply.Marked marked) {
      paper.print(marked.lines());
      return false;
    }
    if (reply instanceof Reply.Bad bad) {
      paper.say(bad.message());
      return false;
    }
    if (reply == Reply.Command.HELP) {
      paper.say(Ask.help(prompt));
    } else if (reply == Reply.Command.WHY) {
      String why = prompt.said().why();
      paper.say(why == null ? "There is no more to say about this step." : "Why: " + why);
    } else if (reply == Reply.Command.OVERVIEW) {
      paper.say(StageTable.lines(bench.overview().stages(), dates));
    } else if (reply == Reply.Command.LOG) {
      paper.say(record());
    }
    return reply == Reply.Command.AGAIN;
  }

  /** Keeps what was named until it is asked for, and says what is wanted here. */
  private boolean named(Reply.Named named, Prompt prompt) {
    supply.add(named.given());
    if (supply.answers(prompt, terms())) {
      return true;
    }
    paper.say(
        "Kept until it is asked for, or something is done to the instrument: "
            + Printable.of(String.join("; ", supply.left()))
            + ".");
    paper.say(List.of("Still wanted here: " + wanted(prompt)));
    return false;
  }

  private static String wanted(Prompt prompt) {
    return String.join(" ", Ask.of(prompt));
  }

  private boolean give(Answer answer, Prompt prompt) throws IOException {
    try {
      bench.answer(answer);
    } catch (Refused e) {
      ahead.clear();
      paper.say("Not taken: " + e.getMessage());
      return false;
    }
    paper.say(Taken.of(answer, prompt));
    boolean looked = prompt instanceof Prompt.Measure || prompt instanceof Prompt.Choose;
    boolean before = looked || prompt instanceof Prompt.Caution || prompt instanceof Prompt.Write;
    if (!before || answer instanceof Answer.Correct) {
      forget();
    }
    return true;
  }

  /**
   * What was seen of the instrument before something was done to it, or before a wait, tells
   * nothing of it afterwards: a reading typed before the strings are tuned is no reading at pitch.
   */
  private void forget() {
    List<String> seen = supply.forgetTheInstrument();
    if (!seen.isEmpty()) {
      paper.say(
          "Not used, since something came in between: "
              + Printable.of(String.join("; ", seen))
              + ". Give it again when it is asked for.");
    }
  }

  /** Lets a wait pass, with a line now and then. */
  private boolean stay(Prompt.Wait wait) throws IOException, Interrupted {
    while (bench.now().isBefore(wait.until())) {
      paper.say(WaitWords.left(wait, bench.now()));
      Duration left = Duration.between(bench.now(), wait.until());
      in.pause(WaitWords.silence(left));
    }
    paper.say(WaitWords.left(wait, bench.now()));
    return give(new Answer.Waited(null), wait);
  }

  private boolean sure() throws IOException, Interrupted {
    if (!in.typedByHand()) {
      return true;
    }
    paper.say(
        List.of(
            "If you leave now: " + bench.standing() + ".",
            "Leave? Type yes; anything else stays."));
    String line = in.readLine(TYPE, List.of("yes", "no"));
    boolean leave = line == null || line.strip().toLowerCase(Locale.ROOT).matches("y|yes|quit");
    if (!leave) {
      paper.say("Still here. Type again to hear the step once more.");
    }
    return leave;
  }

  private void leave() throws IOException {
    paper.say(
        List.of(
            "",
            "Left: " + sentence(bench.leave()),
            bench.overview().kept()
                ? "Everything is kept. Go on later with: resume " + bench.overview().session()
                : "Of a rehearsal nothing is kept."));
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  private List<String> record() {
    Overview overview = bench.overview();
    String trail = TrailLine.of(overview.trail());
    return List.of(
        "Record: " + (trail.isEmpty() ? "no reading and no turn yet" : trail),
        "Rod: " + TurnWords.net(overview.net()) + ".",
        overview.window() == null ? "Window: not set yet." : "Window: " + overview.window() + ".");
  }
}
