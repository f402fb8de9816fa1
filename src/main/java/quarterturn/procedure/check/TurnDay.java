package quarterturn.procedure.check;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.walk.Turning;

/** Nobody turns on past the day. */
final class TurnDay {
  static final Rule RULE =
      new Rule(
          "turn-day",
          "Before each turn it is asked whether the day's turning is used up, and a rest of a day comes where it is.",
          TurnDay::prove);

  private TurnDay() {}

  private static void prove(Proof proof, Findings found) {
    for (Turning turning : proof.turns()) {
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
}
