package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.lesson.student.Gate;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** A dialogue in plain typed lines. */
public final class DialogueLines {
  private static final List<String> WORDS = List.of("quit");

  private final Dialogue dialogue;
  private final LineSource in;
  private final Paper paper;

  /** What stands on the last line for the questions that follow. */
  private final Deque<String> rest = new ArrayDeque<>();

  /** The text printed last, so that unchanged text is printed once. */
  private List<String> said = List.of();

  /** The options printed last. */
  private List<Question.Option> listed = List.of();

  /** The text of the last question that everybody was given time to think about. */
  private List<String> pondered = List.of();

  DialogueLines(Dialogue dialogue, LineSource in, Paper paper) {
    this.dialogue = dialogue;
    this.in = in;
    this.paper = paper;
  }

  /** Asks a dialogue's questions until all are answered or the person leaves. */
  public static Dialogue.End run(Dialogue dialogue, LineSource in, PrintWriter out)
      throws IOException {
    DialogueLines lines = new DialogueLines(dialogue, in, new Paper(out, in));
    lines.rest.addAll(in.kept());
    try {
      for (Question now = dialogue.question(); now != null; now = dialogue.question()) {
        lines.introduce(now);
        String typed = "";
        if (now instanceof Question.Asked asked) {
          List<String> words =
              Stream.concat(WORDS.stream(), dialogue.words().stream()).distinct().toList();
          String line =
              lines.rest.isEmpty() ? in.readLine(asked.asks() + " > ", words) : lines.rest.remove();
          if (line == null) {
            return Dialogue.End.CUT_SHORT;
          }
          typed = lines.first(line.strip(), now);
        }
        if (typed.equals("quit")) {
          lines.paper.say(dialogue.whenLeft());
          return Dialogue.End.LEFT;
        }
        if (!lines.take(typed)) {
          lines.drop(now);
          if (in.scriptLine() > 0) {
            lines.paper.say("The script ends at its line " + in.scriptLine() + ".");
            return Dialogue.End.REFUSED;
          }
        }
      }
      in.keep(List.copyOf(lines.rest));
      return Dialogue.End.ANSWERED;
    } catch (LineSource.StopKeyException e) {
      return Dialogue.End.INTERRUPTED;
    }
  }

  /** Prints what is new in a question's text; false where all of it was printed before. */
  boolean introduce(Question question) {
    List<String> lines = question.lines();
    int both = Math.min(lines.size(), said.size());
    boolean goesOn = lines.subList(0, both).equals(said.subList(0, both));
    List<String> fresh = goesOn ? lines.subList(both, lines.size()) : lines;
    List<Question.Option> options =
        question instanceof Question.Choose choose && choose.listed()
            ? choose.options()
            : List.of();
    boolean other = !options.isEmpty() && !options.equals(listed);
    if ((other || !fresh.isEmpty()) && !question.title().isEmpty()) {
      paper.say("");
    }
    if (other && lines.isEmpty()) {
      paper.say(Printable.of(question.title()) + ".");
    }
    paper.say(fresh.stream().map(Printable::of).toList());
    if (other || (!fresh.isEmpty() && !options.isEmpty())) {
      list(options);
    }
    said = lines;
    listed = options;
    return other || !fresh.isEmpty();
  }

  private void list(List<Question.Option> options) {
    String group = "";
    for (int i = 0; i < options.size(); i++) {
      Question.Option option = options.get(i);
      if (!option.group().equals(group)) {
        group = option.group();
        paper.say(List.of("", group + ":"));
      }
      String name = option.name().equals(option.label()) ? "" : " (" + option.name() + ")";
      String detail = option.detail().isEmpty() ? "" : ": " + option.detail();
      paper.say(Printable.of(i + 1 + ". " + option.label() + name + detail));
    }
    paper.say("");
  }

  /** Forgets what was printed, so that the next question is printed in full. */
  void forget() {
    said = List.of();
    listed = List.of();
  }

  /** Whether everybody is to think first, said once for each question. */
  boolean ponders(Question.Asked asked) {
    if (!asked.ponder() || asked.lines().equals(pondered)) {
      return false;
    }
    pondered = asked.lines();
    paper.say("(A moment to think: " + Gate.QUESTION_PAUSE.toSeconds() + " seconds.)");
    return true;
  }

  /** The first part of a line, of which the others are kept; words of one's own are one part. */
  private String first(String line, Question question) {
    if (question instanceof Question.Words || !rest.isEmpty()) {
      return line;
    }
    String[] parts = line.split(";");
    Stream.of(parts).skip(1).map(String::strip).filter(one -> !one.isEmpty()).forEach(rest::add);
    return parts.length == 0 ? line : parts[0].strip();
  }

  /** Drops what is left of a line, and says before which question it stopped. */
  private void drop(Question question) {
    if (!rest.isEmpty() && question instanceof Question.Asked asked) {
      String before = " before \"" + asked.asks() + "\"";
      paper.say(Printable.of("Stopped" + before + ". Not used: " + String.join("; ", rest) + "."));
      rest.clear();
    }
  }

  /** Gives an answer; false where it is refused. */
  boolean take(String typed) throws IOException {
    try {
      Dialogue.Taken taken = dialogue.take(typed);
      if (!taken.brief().isEmpty()) {
        paper.say(Printable.of(taken.brief()));
      }
      paper.say(taken.told());
      return true;
    } catch (RefusedException | NotUnderstoodException e) {
      // As when a stop came first: what keeps the bench is said next.
      paper.say("Not taken: " + String.valueOf(e.getMessage()).replaceFirst("([^.?!])$", "$1."));
      return false;
    }
  }
}
