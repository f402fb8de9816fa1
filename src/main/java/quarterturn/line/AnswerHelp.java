package quarterturn.line;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.procedure.condition.Feel;
import quarterturn.quick.QuickLine;
import quarterturn.session.Prompt;

/**
 * Tells how each prompt is answered: the short line under it, the help, and the words to complete.
 */
final class AnswerHelp {
  /** The words that work at every prompt. */
  static final List<String> COMMANDS =
      List.of("help", "why", "next", "log", "overview", "back", "again", "quit");

  private AnswerHelp() {}

  /** The same, where a wait that is over asks for nothing but to go on. */
  static String of(Prompt prompt, Instant now) {
    boolean passed = prompt instanceof Prompt.Wait wait && !now.isBefore(wait.until());
    return passed ? "Type done to go on." : of(prompt);
  }

  /** The short line under the prompt; empty where nothing is asked. */
  static String of(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> tell.enter(),
            caution -> "Type understood (or u) to go on. Enter alone does not.",
            choose -> "Type the number or the word of your answer.",
            write -> "Type one line; a hyphen stands for nothing to write.",
            measure ->
                measure.quantity().bracket()
                    ? "Type the reading, for example 0.30 passes 0.35 lifts; or touches; or cannot."
                    : "Type the number, for example "
                        + measure.quantity().example()
                        + "; or cannot.",
            turn ->
                "Type how far it really turned and how it felt, for example 1/8 smooth, or 0 jammed.",
            wait ->
                "Type wait to be told when it is over, or done when the time has passed."
                    + (wait.mayLift() ? " Type lift and a reason to end it early." : "")
                    + (wait.rest() ? " You can quit meanwhile and come back." : ""),
            done -> "",
            over -> ""));
  }

  /**
   * Everything that can be typed now.
   *
   * @param ahead whether answers may be typed before they are asked for
   */
  static List<String> help(Prompt prompt, boolean ahead, boolean technician) {
    List<String> lines = new ArrayList<>();
    lines.add("What you can type now:");
    lines.addAll(own(prompt));
    if (ahead) {
      lines.add(
          "relief .42 low .38 high; rh 48: readings by their names, before they are asked for.");
    }
    if (ahead && technician) {
      lines.add("Several with ; between them: answers to this and to what is asked after it.");
      lines.add("Names of readings, and in short: " + String.join(", ", QuickLine.shown()) + ".");
      lines.add("drop relief: forgets what was typed under that name. A later value replaces it.");
    }
    lines.add("why: the reason for this step.");
    lines.add("next: what comes after this step.");
    lines.add("log: the readings and turns so far.");
    lines.add("overview: what is fresh, and what is stale.");
    lines.add("back or undo: take the last answer back and give it again.");
    lines.add("again: read this step once more.");
    lines.add("quit: leave in order.");
    return lines;
  }

  private static List<String> own(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> List.of(tell.informs() ? "Enter: go on." : "Enter or done: it is done."),
            caution ->
                List.of("understood, or u: you have read the hazard and know how to avoid it."),
            choose ->
                List.of(
                    "1 to "
                        + choose.options().size()
                        + ", or the word behind it, or its beginning.",
                    "Enter alone answers nothing here."),
            write -> List.of("One line of words.", "-: nothing to write."),
            AnswerHelp::reading,
            AnswerHelp::turn,
            AnswerHelp::waiting,
            done -> List.of(),
            over -> List.of()));
  }

  private static List<String> reading(Prompt.Measure measure) {
    return measure.quantity().bracket()
        ? List.of(
            "0.30 passes 0.35 lifts: one gauge just passes, the next pushes the string up.",
            "0.30..0.35, or 12..14 thou: the same in short.",
            "0.30: this gauge just drags.",
            "card: a bank card in place of a gauge, as in card passes.",
            "touches: there is no gap.",
            "cannot: it can't be measured here.",
            "Readings for the next questions too, with ; between them.")
        : List.of(
            "A number, for example " + measure.quantity().example() + ".",
            "cannot: it can't be measured here.");
  }

  private static List<String> waiting(Prompt.Wait wait) {
    List<String> lines = new ArrayList<>();
    lines.add("wait: stay here until it is over, with the time left said now and then.");
    lines.add("done: the time has passed.");
    if (wait.mayLift()) {
      lines.add("lift REASON: end it early; the reason is kept in the record.");
    }
    return lines;
  }

  private static List<String> turn(Prompt.TurnRod turn) {
    List<String> lines = new ArrayList<>();
    lines.add("1/16 smooth, 0.1 smooth or 30 deg smooth: this much, the way that was asked.");
    lines.add("0 jammed: it did not move.");
    lines.add("other way 1/8 smooth: it was turned the wrong way, this much.");
    lines.add("tighten 1/8 stiff, or loosen 1/8 stiff: what was really done.");
    lines.add(
        "The feel is its word, its beginning, or its number: " + String.join(", ", feels()) + ".");
    if (turn.canUndo()) {
      lines.add("undo: take the last turn back instead; back still takes an answer back.");
    }
    return lines;
  }

  /** The words that completion offers at a prompt. */
  static List<String> words(Prompt prompt) {
    List<String> own =
        prompt.match(
            new Prompt.Cases<>(
                tell -> List.of("done"),
                caution -> List.of("understood"),
                choose -> choose.options().stream().map(Prompt.Option::id).toList(),
                write -> List.of("done"),
                measure -> List.of("passes", "lifts", "touches", "cannot"),
                turn ->
                    Stream.concat(Stream.of("other", "way", "tighten", "loosen"), feels().stream())
                        .toList(),
                wait -> wait.mayLift() ? List.of("wait", "done", "lift") : List.of("wait", "done"),
                done -> List.of("done"),
                over -> List.of("done")));
    List<String> back = prompt instanceof Prompt.Caution ? List.of() : List.of("undo");
    return Stream.of(own, COMMANDS, back).flatMap(List::stream).distinct().toList();
  }

  static List<String> feels() {
    return Arrays.stream(Feel.values()).map(Feel::word).toList();
  }
}
