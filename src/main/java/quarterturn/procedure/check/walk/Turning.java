package quarterturn.procedure.check.walk;

import java.util.List;
import java.util.Set;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.kind.Quantity;

/** A turn of the rod, on one way to it. */
public record Turning(Step.TurnRod turn, Reachability.Node node) {
  @Override
  public String toString() {
    return "the turn " + turn.id();
  }

  /** How relief is held before it. */
  public Freshness relief() {
    return node.at().held(Quantity.RELIEF);
  }

  /** Whether it takes a turn back. */
  public boolean undoes() {
    return turn.amount() instanceof Step.Amount.Undo;
  }

  /** Those of some facts that are not known before it. */
  public List<Fact> missing(Set<Fact> needs) {
    return needs.stream().filter(need -> !node.at().has(need)).toList();
  }
}
