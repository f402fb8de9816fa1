package quarterturn.procedure.check.rule.text;

import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.words.Act;

/** The rule that what only a repairer should do, or nobody, is ordered nowhere. */
public final class RepairersWork {
  public static final Rule RULE =
      Rule.ofSteps(
          "repairers-work",
          "No words order glue, heat, wet wood, weights, power tools, blows, prying or work on live parts.",
          RepairersWork::prove);

  private RepairersWork() {}

  private static void prove(Proof proof, Step step, Findings found) {
    proof.said(step).stream()
        .filter(said -> said.order().act() == Act.REPAIR)
        .forEach(
            said ->
                found.add(
                    step,
                    step.id() + " orders what no sheet may: " + said.quoted(),
                    "leave it to a qualified repairer, or take it out"));
  }
}
