package quarterturn.procedure.check;

import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** Nobody turns on past the day. */
final class TurnDay implements Proving {
  @Override
  public String id() {
    return "turn-day";
  }

  @Override
  public String means() {
    return "Before each turn it is asked whether the day's turning is used up, and a rest of a day comes where it is.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      if (node.step() instanceof Step.TurnRod turn
          && !node.at().dayLeft()
          && node.at().held(Quantity.RELIEF) == Held.FRESH
          && !(turn.amount() instanceof Step.Amount.Undo)) {
        found.add(
            this,
            turn.mark(),
            "the turn " + turn.id() + " can be reached without asking what was turned today",
            "ask after the reading: turned today at least "
                + proof.limits().beginnerDay()
                + ", and go to a wait with rest: true where it was",
            proof.paths().way(node));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
            - when: neck not turned yet or moved as told or could not be seen to move
              go: day
        """,
        """
            - when: neck not turned yet
              go: slacken
            - when: neck moved as told or could not be seen to move
              go: day
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
            - when: neck not turned yet or moved as told or could not be seen to move
              go: day
        """);
  }
}
