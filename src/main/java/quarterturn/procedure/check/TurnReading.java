package quarterturn.procedure.check;

import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** A turn rests on a fresh reading. */
final class TurnReading implements Proving {
  @Override
  public String id() {
    return "turn-reading";
  }

  @Override
  public String means() {
    return "Before a turn relief was read on the lowest string, at pitch and settled, and nothing changed since.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      Held held = node.at().held(Quantity.RELIEF);
      if (node.step() instanceof Step.TurnRod turn
          && held != Held.FRESH
          && held != Held.AFTER_TURN) {
        found.add(
            this,
            turn.mark(),
            "the turn " + turn.id() + " can come without a fresh reading",
            "let the strings be tuned, the neck settle and its relief be read on this way",
            proof.paths().way(node));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
        - tell: slacken
          text: Slacken every string by a whole tone.
          hazards: [string-whip]
          establishes: [detuned]
          go: turn
        """,
        """
        - tell: slacken
          text: Slacken every string by a whole tone.
          hazards: [string-whip]
          establishes: [detuned]
          go: hang
        - wait: hang
          text: Let the strings hang for {minutes}.
          for: 24 h
          go: turn
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
        - tell: slacken
          text: Slacken every string by a whole tone.
          hazards: [string-whip]
          establishes: [detuned]
          go: turn
        """);
  }
}
