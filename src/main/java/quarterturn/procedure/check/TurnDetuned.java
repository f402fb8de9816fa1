package quarterturn.procedure.check;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.Subject;

/** A rod is tightened with its strings slack. */
final class TurnDetuned implements Proving {
  @Override
  public String id() {
    return "turn-detuned";
  }

  @Override
  public String means() {
    return "Before the rod is tightened, or a turn is taken back, the strings are slackened on every way.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      if (!(node.step() instanceof Step.TurnRod turn) || !mayTighten(proof, node, turn)) {
        continue;
      }
      for (Fact need : proof.limits().tightenNeeds()) {
        if (!node.at().has(need)) {
          found.add(
              this,
              turn.mark(),
              "the turn " + turn.id() + " may tighten the rod before " + need.meaning(),
              "let a step that establishes " + need.word() + " come first on this way",
              proof.paths().way(node));
        }
      }
    }
  }

  private static boolean mayTighten(Proof proof, Paths.Node node, Step.TurnRod turn) {
    if (turn.amount() instanceof Step.Amount.Fixed fixed) {
      return fixed.turn().turns() > 0;
    }
    int relief = proof.paths().frame().index(new Subject.Reading(Quantity.RELIEF));
    return turn.amount() instanceof Step.Amount.Undo
        || relief < 0
        || (node.at().mask(relief) & proof.paths().frame().where(Frame.TIGHTEN)) != 0;
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
