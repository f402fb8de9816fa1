package quarterturn.procedure.check;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/**
 * What rules are decided on.
 *
 * @param library everything that was read
 * @param procedure the one to be proven
 * @param paths every way through it
 */
record Proof(Library library, Procedure procedure, Paths paths) {
  Limits limits() {
    return library.limits();
  }

  Map<String, Step> steps() {
    return procedure.steps();
  }

  /** The nearest node at a step, or null where it is never reached. */
  Paths.@Nullable Node nearest(String step) {
    List<Paths.Node> nodes = paths.at(step);
    return nodes.isEmpty() ? null : nodes.get(0);
  }

  /** The nodes at the turns of the rod. */
  List<Paths.Node> turns() {
    return steps().values().stream()
        .filter(Step.TurnRod.class::isInstance)
        .flatMap(step -> paths.at(step.id()).stream())
        .toList();
  }
}
