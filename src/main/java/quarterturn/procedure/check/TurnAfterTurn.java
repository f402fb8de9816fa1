package quarterturn.procedure.check;

import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** Between two turns the neck is read. */
final class TurnAfterTurn implements Proving {
  @Override
  public String id() {
    return "turn-after-turn";
  }

  @Override
  public String means() {
    return "Between two turns the strings are retuned, the neck settles and its relief is read, on every way.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      if (node.step() instanceof Step.TurnRod turn
          && node.at().held(Quantity.RELIEF) == Held.AFTER_TURN) {
        found.add(
            this,
            turn.mark(),
            "the turn " + turn.id() + " can follow a turn with no reading between",
            "let every feel lead to retuning, a wait and a reading before the next turn",
            proof.paths().way(node));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
            smooth: tune
            stiff: tune
            jammed: repairer
            free: tune
            noise: repairer
            slipped: repairer
        """,
        """
            smooth: tune
            stiff: turn-back
            jammed: repairer
            free: tune
            noise: repairer
            slipped: repairer
        - turn: turn-back
          text: Take the turn back, {turn}.
          hazards: [tool-slip, rod-force, wrong-key]
          amount: undo
          limit: 1/4 turn
          felt:
            smooth: tune
            stiff: tune
            jammed: repairer
            free: tune
            noise: repairer
            slipped: repairer
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
            smooth: tune
            stiff: tune
            jammed: repairer
            free: tune
            noise: repairer
            slipped: repairer
        """);
  }
}
