package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/**
 * The rule that before each turn the day's limit is asked for, and a day's rest comes where it is
 * reached.
 */
public final class TurnDay {
  public static final Rule RULE =
      Turning.rule(
          "turn-day",
          "Before each turn it is asked whether the day's turning is used up, and a rest of a day comes where it is.",
          TurnDay::prove);

  private TurnDay() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    boolean asked = turning.node().at().dayLeft();
    if (!asked && turning.relief() == Freshness.FRESH && !turning.undoes()) {
      found.add(
          turning.node(),
          turning + " can be reached without asking what was turned today",
          "ask after the reading: turned today at least "
              + proof.limits().beginnerDay()
              + ", and go to a wait with rest: true where it was");
    }
  }
}
