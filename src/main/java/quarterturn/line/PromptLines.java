package quarterturn.line;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.kind.Which;
import quarterturn.quick.Begun;
import quarterturn.report.TurnWords;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;

/**
 * A prompt as short labelled paragraphs: the place, then hazards with their word first, then what
 * to do, then how to answer.
 */
final class PromptLines {
  private PromptLines() {}

  /**
   * The lines of a prompt.
   *
   * @param before what was printed before
   */
  static List<String> of(
      Prompt prompt, Overview overview, Instant now, Dates dates, Printed before) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    if (!prompt.ended()) {
      lines.add(overview.place());
    }
    lines.addAll(warned(prompt, before));
    lines.addAll(told(prompt, before));
    lines.addAll(PictureWords.of(prompt, overview));
    lines.addAll(details(prompt, now, dates));
    if (!prompt.ended()) {
      lines.add(AnswerHelp.of(prompt, now));
    }
    return lines;
  }

  /** The hazards, in full where they are to be accepted. */
  static List<String> warned(Prompt prompt, Printed before) {
    List<String> lines = new ArrayList<>();
    if (prompt instanceof Prompt.Caution caution) {
      caution.hazards().forEach(hazard -> lines.add(hazard(hazard)));
    }
    prompt.said().hazards().stream()
        .filter(hazard -> !before.hazards().contains(hazard))
        .forEach(hazard -> lines.add(reminder(hazard)));
    return lines;
  }

  /** The lines on what to do now, with the notes that were not printed before. */
  static List<String> told(Prompt prompt, Printed before) {
    List<String> lines = new ArrayList<>();
    prompt.said().notes().stream()
        .filter(note -> !before.notes().contains(note))
        .forEach(note -> lines.add("Note: " + note));
    prompt.said().first().forEach(first -> lines.add("First: " + first.text()));
    lines.addAll(lead(prompt));
    if (!prompt.said().text().isBlank()) {
      lines.add(prompt.said().text());
    }
    return lines;
  }

  /** A hazard in full: the signal word, then what can happen and how to avoid it. */
  static String hazard(Hazard hazard) {
    return hazard.word() + ": " + hazard.harm() + " " + hazard.avoid();
  }

  /** A hazard that was accepted before: the signal word, and one sentence. */
  static String reminder(Hazard hazard) {
    return hazard.word() + ": " + hazard.brief();
  }

  private static List<String> lead(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> List.of(),
            caution -> List.of(),
            choose -> List.of(),
            write -> List.of(),
            measure -> List.of(),
            turn -> List.of("Turn the truss rod nut: " + TurnWords.order(turn.turn()) + "."),
            wait -> List.of(),
            done -> List.of("Done: " + done.words()),
            over -> List.of("Hand over to a repairer: " + over.words())));
  }

  /** The lines of one kind of prompt: its options, the reading, the bounds of a turn. */
  private static List<String> details(Prompt prompt, Instant now, Dates dates) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> List.of(),
            caution -> List.of(),
            choose -> options(choose),
            write -> List.of(),
            measure -> List.of(reading(measure)),
            turn -> Stream.concat(bounds(turn).stream(), feels().stream()).toList(),
            wait -> time(wait, now, dates),
            done -> List.of(),
            over -> List.of()));
  }

  private static String reading(Prompt.Measure measure) {
    String unit = measure.quantity().unit();
    String string = Which.on(measure.which(), measure.string());
    return "Reading wanted: " + measure.quantity().said() + " in " + unit + string + ".";
  }

  /** How long a wait lasts, and until when; or that its time has passed. */
  static List<String> time(Prompt.Wait wait, Instant now, Dates dates) {
    if (!now.isBefore(wait.until())) {
      return List.of(WaitWords.left(wait, now));
    }
    List<String> lines = new ArrayList<>();
    String lasting = Dates.lasting(wait.length());
    lines.add("Wait " + lasting + ", until " + dates.over(wait.until()) + ".");
    lines.add(WaitWords.left(wait, now));
    lines.add("Meanwhile: " + wait.meanwhile());
    return lines;
  }

  private static List<String> options(Prompt.Choose choose) {
    return numbered(choose.options().stream().map(o -> o.label() + " (" + o.id() + ")").toList());
  }

  private static List<String> numbered(List<String> answers) {
    return IntStream.range(0, answers.size()).mapToObj(i -> i + 1 + ". " + answers.get(i)).toList();
  }

  /** The lines on the most that may be turned, and on what it should lead to. */
  static List<String> bounds(Prompt.TurnRod turn) {
    List<String> lines = new ArrayList<>();
    lines.add("The most between two readings: " + turn.limit() + ".");
    Prompt.Expected expected = turn.expected();
    if (expected != null) {
      String high = Decimals.print(expected.highMm(), 2) + " mm";
      lines.add(
          "The reading afterwards should show "
              + (Double.isInfinite(expected.lowMm())
                  ? "at most " + high + "; the string may still touch."
                  : Decimals.print(expected.lowMm(), 2) + " to " + high + "."));
    }
    return lines;
  }

  private static List<String> feels() {
    return numbered(Begun.FEELS.stream().map(f -> f.label() + " (" + f.word() + ")").toList());
  }
}
