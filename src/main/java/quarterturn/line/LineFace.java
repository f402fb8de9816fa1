package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.line.LineSource.ChangedException;
import quarterturn.line.LineSource.StopKeyException;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.condition.Role;
import quarterturn.quick.Mistyped;
import quarterturn.quick.Part;
import quarterturn.quick.QuickLine;
import quarterturn.quick.TypedAhead;
import quarterturn.report.StageTable;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.ExitStatus;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.DisplacedException;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** Plays a session as plain lines that a screen reader can follow. */
public final class LineFace {
  private static final String TYPE = "> ";

  private final Bench bench;
  private final LineSource in;
  private final Paper paper;
  private final Dates dates;
  private final Between between;

  private final TypedAhead ahead;

  /** The hazards of the page that was printed last. */
  private List<Hazard> accepted = List.of();

  /** The notes printed in that part. */
  private final Set<String> noted = new HashSet<>();

  /** The line typed last. */
  private String typed = "";

  /** Whether it was refused, or a part of it. */
  private boolean refused;

  /** The part of the procedure that a technician was last told the name of. */
  private String part = "";

  /** A line that was typed while a wait was waited for. */
  private @Nullable String early;

  private LineFace(Bench bench, LineSource in, PrintWriter out, Dates dates, Between between) {
    this.bench = bench;
    this.in = in;
    this.paper = new Paper(out, in);
    this.ahead = new TypedAhead(bench);
    this.dates = dates;
    this.between = between;
  }

  /** Plays {@code bench} until it ends or the person leaves, and returns the exit status. */
  public static int run(Bench bench, LineSource in, PrintWriter out, Dates dates) {
    return run(bench, in, out, dates, () -> bench.overview().later());
  }

  /** Plays {@code bench} with what comes between its prompts, and returns the exit status. */
  static int run(Bench bench, LineSource in, PrintWriter out, Dates dates, Between between) {
    LineFace face = new LineFace(bench, in, out, dates, between);
    try {
      return face.play();
    } catch (DisplacedException e) {
      face.paper.say(between.stopped(e));
      return ExitStatus.FAILED;
    } catch (UncheckedIOException e) {
      return face.unread(e);
    } catch (IOException e) {
      face.paper.say(
          "Stopped: the record could not be read or written ("
              + e.getMessage()
              + "). Everything answered before is kept.");
      return ExitStatus.FAILED;
    }
  }

  /** Leaves the bench where nobody gets what is printed. */
  private int unread(UncheckedIOException printed) {
    try {
      bench.leave();
    } catch (IOException e) {
      printed.addSuppressed(e);
    }
    throw printed;
  }

  private int play() throws IOException {
    try {
      open();
      typed = String.join("; ", in.kept());
      if (between.ahead() && !typed.isEmpty()) {
        keep(QuickLine.parts(typed, ahead.terms()));
      }
      return talk();
    } catch (StopKeyException e) {
      leave();
      return ExitStatus.INTERRUPTED;
    }
  }

  private void open() {
    Overview overview = bench.overview();
    paper.say(
        List.of(
            overview.stage() + ", " + overview.instrument() + ".",
            "Session " + overview.session() + ". Type ? to hear what can be typed."));
  }

  private int talk() throws IOException, StopKeyException {
    boolean show = true;
    while (true) {
      Between.Then then = between.before();
      if (then == Between.Then.LEAVE) {
        leave();
        return ExitStatus.DONE;
      }
      show |= then == Between.Then.SAID;
      Prompt prompt = bench.prompt();
      Answer given = ahead.take(prompt, paper::say);
      if (given != null) {
        note(bench.news());
        show = give(given, prompt);
        continue;
      }
      paper.say(ahead.reminder(prompt));
      refused |= ahead.wasRefused();
      if (refused && in.scriptLine() > 0 && between.ahead()) {
        paper.say("The script ends at its line " + in.scriptLine() + ", " + quoted(typed) + ".");
        if (prompt.ended()) {
          show(prompt);
        } else {
          leave();
        }
        return ExitStatus.FAILED;
      }
      if (show) {
        show(prompt);
      }
      if (prompt.ended()) {
        paper.say(RecordLines.of(bench.overview(), false));
        return prompt instanceof Prompt.HandOver ? ExitStatus.HAND_OVER : ExitStatus.DONE;
      }
      try {
        Reply reply = next(prompt);
        if (reply == null || (reply == Reply.Command.QUIT && sure())) {
          leave();
          return ExitStatus.DONE;
        }
        show = act(reply, prompt);
      } catch (ChangedException e) {
        show = changed(prompt);
      }
    }
  }

  /** Sees what came up; true where the prompt is another one now. */
  private boolean changed(Prompt before) throws IOException, StopKeyException {
    Between.Then then = between.before();
    return then == Between.Then.SAID || !bench.prompt().equals(before);
  }

  private void show(Prompt prompt) {
    List<String> news = prompt.ended() ? List.of() : bench.news();
    note(news);
    Printed before = new Printed(news, accepted);
    paper.say(
        technician()
            ? BriefLines.of(prompt, bench.overview(), bench.now(), dates, part, before)
            : PromptLines.of(prompt, bench.overview(), bench.now(), dates, before));
    if (!part.equals(prompt.said().part())) {
      noted.retainAll(news);
    }
    accepted = prompt instanceof Prompt.Caution caution ? caution.hazards() : List.of();
    part = prompt.said().part();
    ahead.shown(prompt);
  }

  /** Prints notes that were not printed in this part of the procedure. */
  private void note(List<String> notes) {
    notes.stream().filter(noted::add).forEach(note -> paper.say("Note: " + note));
  }

  /** The next typed reply; null at the end of input. */
  private @Nullable Reply next(Prompt prompt)
      throws IOException, StopKeyException, ChangedException {
    List<String> words = new ArrayList<>(AnswerHelp.words(prompt));
    words.addAll(technician() ? ahead.terms().words() : List.of());
    words.addAll(between.words());
    String asks = technician() ? TypedAhead.wanted(prompt) + TYPE : TYPE;
    String waited = early;
    early = null;
    String line =
        waited == null ? in.readLine(asks, words, LineSource.Seen.SHOWN, between::changed) : waited;
    if (line != null && between.takes(line, asks)) {
      return Reply.Command.HANDLED;
    }
    if (line == null) {
      return null;
    }
    typed = line;
    return between.ahead()
        ? TypedFurther.read(line, prompt, ahead.terms(), bench.overview().role(), bench.now())
        : TypedReplyReader.read(line, prompt, bench.now());
  }

  private boolean technician() {
    return bench.overview().role() == Role.TECHNICIAN;
  }

  /** Does what a reply asks for; true where the prompt is to be printed afterwards. */
  private boolean act(Reply reply, Prompt prompt)
      throws IOException, StopKeyException, ChangedException {
    if (reply instanceof Reply.Give give) {
      boolean taken = give(give.answer(), prompt);
      if (taken) {
        keep(give.rest());
      }
      return taken;
    }
    if (reply instanceof Reply.Parts parts) {
      return parts(parts, prompt);
    }
    if (reply instanceof Reply.Stay && prompt instanceof Prompt.Wait wait) {
      return stay(wait);
    }
    if (reply instanceof Reply.Bad bad) {
      paper.say(bad.message());
      refused = true;
      return false;
    }
    if (reply instanceof Reply.Command command) {
      paper.say(told(command, prompt));
    }
    return reply == Reply.Command.AGAIN;
  }

  private List<String> told(Reply.Command command, Prompt prompt) {
    String why = prompt.said().why();
    return switch (command) {
      case HELP -> {
        List<String> help = new ArrayList<>(AnswerHelp.help(prompt, between.ahead(), technician()));
        help.addAll(between.help());
        yield help;
      }
      case NEXT -> coming();
      case WHY -> List.of(why == null ? "There is no more to say about this step." : "Why: " + why);
      case OVERVIEW -> StageTable.lines(bench.overview().stages(), dates);
      case LOG -> RecordLines.of(bench.overview(), true);
      case AGAIN, QUIT, HANDLED -> List.of();
    };
  }

  /** Keeps answers until they are asked for; true where one answers the prompt on view. */
  private boolean parts(Reply.Parts line, Prompt prompt) throws IOException {
    Answer waited = ahead.waited(prompt);
    if (waited != null) {
      give(waited, prompt);
      keep(line.parts());
      return true;
    }
    keep(line.parts());
    return ahead.takes(prompt);
  }

  private void keep(List<Part> parts) {
    ahead.add(parts).forEach(wrong -> paper.print(marked(wrong)));
  }

  private List<String> marked(Mistyped wrong) {
    return wrong.lines(typed).stream().map(Printable::of).toList();
  }

  private static String quoted(String line) {
    return "\"" + TypedReplyReader.shortened(line) + "\"";
  }

  private List<String> coming() {
    List<String> coming = bench.upcoming();
    return coming.isEmpty()
        ? List.of("Nothing can be said yet of what comes next.")
        : coming.stream().map(line -> "Next: " + line).toList();
  }

  private boolean give(Answer answer, Prompt prompt) throws IOException {
    try {
      bench.answer(answer);
    } catch (RefusedException e) {
      paper.say("Not taken: " + e.getMessage());
      ahead.refused(paper::say);
      return false;
    }
    String label = technician() ? TypedAhead.wanted(prompt) : "Taken";
    paper.say(Taken.of(answer, prompt, label));
    ahead.gave(answer, prompt, paper::say);
    return true;
  }

  /** Waits until a wait is over, printing the time left now and then. */
  private boolean stay(Prompt.Wait wait) throws IOException, StopKeyException, ChangedException {
    while (bench.now().isBefore(wait.until())) {
      paper.say(WaitWords.left(wait, bench.now()));
      Duration left = Duration.between(bench.now(), wait.until());
      early = between.meanwhile(in, WaitWords.silence(left));
      if (early != null) {
        return false;
      }
    }
    paper.say(WaitWords.left(wait, bench.now()));
    return give(new Answer.Waited(null), wait);
  }

  private boolean sure() throws IOException, StopKeyException, ChangedException {
    boolean leave = Leaving.sure(bench, in, paper, between);
    if (!leave) {
      paper.say("Still here. Type again to hear the step once more.");
    }
    return leave;
  }

  private void leave() throws IOException {
    List<String> parting = bench.overview().parting();
    paper.say(List.of("", "Left: " + sentence(bench.leave())));
    if (!parting.isEmpty()) {
      paper.say("Now: " + String.join(" ", parting));
    }
    paper.say(between.kept());
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }
}
