package quarterturn.procedure.check.rule.turn;

import java.util.regex.Pattern;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.rule.Said;
import quarterturn.procedure.check.words.Act;

/** The rule that only a turn step orders a turn of the rod. */
public final class OrderedTurn {
  public static final Rule RULE =
      Rule.ofSteps(
          "ordered-turn",
          "Only a turn step orders a turn of the rod; no other step's words do.",
          OrderedTurn::prove);

  /** Somebody tells of what was just done, and of the rod. */
  private static final Pattern MADE =
      Pattern.compile(
          "\\bI (have |just |'ve )*(let|turned?|tightened|loosened|backed|gave|eased?|nudged?)\\b");

  private static final Pattern ROD = Pattern.compile("\\b(rod|rod nut|key|adjuster)\\b");

  private OrderedTurn() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.TurnRod) {
      return;
    }
    if (step instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (MADE.matcher(option.label()).find() && ROD.matcher(option.label()).find()) {
          found.add(
              step,
              "an answer of "
                  + step.id()
                  + " tells of a turn that no step has ordered: \""
                  + option.label()
                  + "\"",
              "let a turn step order it, so that it is counted");
        }
      }
    }
    for (Said said : proof.said(step)) {
      if (said.order().act() == Act.TURN_ROD) {
        found.add(
            step,
            step.id() + " orders a turn of the rod: " + said.quoted(),
            "give it a turn step (turn: rod, as advised), or say it as an explanation");
      }
    }
  }
}
