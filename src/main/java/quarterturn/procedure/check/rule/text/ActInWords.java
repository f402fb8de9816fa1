package quarterturn.procedure.check.rule.text;

import java.util.HashSet;
import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Dangers;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.rule.Said;
import quarterturn.procedure.check.words.Act;

/**
 * The rule that an act which changes the instrument stands in a step that says so to the program.
 * Strings come off and on over several steps, so there the step below may say it.
 */
public final class ActInWords {
  public static final Rule RULE =
      Rule.ofSteps(
          "act-in-words",
          "A step that orders a change of the instrument has the kind, fact or change that goes with it.",
          ActInWords::prove);

  private ActInWords() {}

  private static void prove(Proof proof, Step step, Findings found) {
    for (Said said : proof.said(step)) {
      Act act = said.order().act();
      if (act == null || act == Act.TURN_ROD || act == Act.REPAIR || act == Act.EASE_STRING) {
        continue;
      }
      if (step instanceof Step.Adjust && said.order().adds()) {
        found.add(
            step,
            step.id() + " orders more than the program works out: " + said.quoted(),
            "take it out; how far is said by {order} alone");
      }
      if (step instanceof Step.End) {
        if (!act.inEnds()) {
          found.add(
              step,
              "the end " + step.id() + " orders what only a step can: " + said.quoted(),
              "give it a step before this end, or let a repairer do it");
        }
      } else if (does(proof, step, act).stream().noneMatch(act.needs()::contains)) {
        found.add(
            step,
            step.id() + " orders what it does not tell the program: " + said.quoted(),
            "give it " + act.mend() + ", or say it as an explanation");
      }
    }
  }

  private static Set<String> does(Proof proof, Step step, Act act) {
    Set<String> does = new HashSet<>(Dangers.does(step));
    if (act == Act.CHANGE_STRINGS || act == Act.CUT_STRING) {
      step.exits().forEach(exit -> does.addAll(Dangers.does(proof.procedure().step(exit.to()))));
    }
    return does;
  }
}
