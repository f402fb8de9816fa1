package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Frame;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;

/** The rule that a rod is tightened with its strings slack. */
public final class TurnDetuned {
  public static final Rule RULE =
      Turning.rule(
          "turn-detuned",
          "Before the rod is tightened, or a turn is taken back, the strings are slackened on every way.",
          TurnDetuned::prove);

  private TurnDetuned() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    if (mayTighten(proof, turning)) {
      for (Fact need : turning.missing(proof.limits().tightenNeeds())) {
        found.add(
            turning.node(),
            turning + " may tighten the rod before " + need.meaning(),
            "let a step that establishes " + need.word() + " come first on this way");
      }
    }
  }

  private static boolean mayTighten(Proof proof, Turning turning) {
    if (turning.turn().amount() instanceof Step.Amount.Fixed fixed) {
      return fixed.turn().turns() > 0;
    }
    int relief = proof.paths().frame().index(new Subject.Reading(Quantity.RELIEF));
    return turning.undoes()
        || turning.setsBack()
        || relief < 0
        || (turning.node().at().mask(relief) & proof.paths().frame().where(Frame.TIGHTEN)) != 0;
  }
}
