package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quarterturn.craft.Window;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;

/**
 * Words about a reading or a turn that is still to be predicted. Before the way of a turn is locked
 * they hold nothing of the prompt's own text, since that may tell it.
 */
final class ComingWords {
  private ComingWords() {}

  /** The lines before a prediction: what comes next, and by what it can be told. */
  static List<String> of(Prompt coming, Round round, Overview overview) {
    List<String> out = new ArrayList<>();
    boolean relief = true;
    if (round.opened().turn()) {
      out.add("Next is a turn of the truss rod. Which way?");
    } else if (coming instanceof Prompt.Measure measure) {
      out.add("Next is a reading: " + reading(measure) + ". Predict it before you take it.");
      relief = measure.quantity() == Quantity.RELIEF;
    } else if (coming instanceof Prompt.TurnRod turn) {
      out.add(
          "Next is the turn: "
              + new Value.Rod(turn.turn())
              + ", where "
              + turn.limit()
              + " is the most. Predict the gap that you will read after it.");
    }
    Value before = round.opened().before();
    if (before != null) {
      out.add("Last reading: " + before + ".");
    }
    Window window = overview.window();
    if (relief && window != null) {
      out.add("Range: " + window + ".");
    }
    return out;
  }

  static String reading(Prompt.Measure measure) {
    String string = Which.on(measure.which(), measure.string());
    String held =
        measure.held().isEmpty()
            ? ""
            : ", held at fret "
                + measure.held().stream().map(String::valueOf).collect(Collectors.joining(" and "));
    String at = measure.readAt() == 0 ? "" : ", over fret " + measure.readAt();
    return measure.quantity().said() + string + held + at;
  }

  /** What is asked of a prediction. */
  static Expecting expecting(Prompt coming, Round round, Map<Quantity, Bench.Plausible> plausible) {
    Quantity read = coming instanceof Prompt.Measure measure ? measure.quantity() : Quantity.RELIEF;
    return new Expecting(round.opened().turn() ? null : read, plausible);
  }

  /**
   * The lines that help with a prediction.
   *
   * @param worked the steps of the worked example
   */
  static List<String> help(Prompt coming, Round round, List<String> worked) {
    if (round.opened().turn()) {
      return List.of(
          "A gap above its range asks an ordinary rod to be tightened, a gap below it to be"
              + " loosened.");
    }
    if (coming instanceof Prompt.TurnRod) {
      return List.of(
          "What earlier turns did on this neck tells most. Tightening an ordinary rod makes the gap"
              + " smaller.");
    }
    return worked.isEmpty()
        ? List.of("Think of what was done since the last reading, and which way that moves a neck.")
        : worked;
  }
}
