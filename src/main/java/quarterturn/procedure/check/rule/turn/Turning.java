package quarterturn.procedure.check.rule.turn;

import java.util.List;
import java.util.Set;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.kind.Quantity;

/** A turn of the rod, on one way to it. */
public record Turning(Step.TurnRod turn, Reachability.Node node) {
  /** Decides a rule that each turn keeps or breaks, on every way to it. */
  interface OnTurn {
    /** Adds a finding where the turn breaks the rule. */
    void prove(Proof proof, Turning turning, Findings found);
  }

  /** A rule that each turn keeps or breaks. */
  static Rule rule(String id, String means, OnTurn proving) {
    return Rule.ofSteps(
        id,
        means,
        (proof, step, found) -> {
          if (step instanceof Step.TurnRod turn) {
            proof
                .paths()
                .at(step.id())
                .forEach(node -> proving.prove(proof, new Turning(turn, node), found));
          }
        });
  }

  @Override
  public String toString() {
    return "the turn " + turn.id();
  }

  /** How fresh the relief reading is before the turn. */
  Freshness relief() {
    return node.at().held(Quantity.RELIEF);
  }

  /** Whether the turn takes the last one back. */
  boolean undoes() {
    return turn.amount() instanceof Step.Amount.Undo;
  }

  /** Whether the turn sets back what the last lesson or session turned. */
  boolean setsBack() {
    return turn.setsBack();
  }

  /** Those of {@code needs} that are not known to hold before the turn. */
  List<Fact> missing(Set<Fact> needs) {
    return needs.stream().filter(need -> !node.at().has(need)).toList();
  }
}
