package quarterturn.procedure.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.AbstractState;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.check.walk.Turning;

/**
 * What rules are decided on.
 *
 * @param library everything that was read
 * @param procedure the one to be proven
 * @param paths every way through it
 */
record Proof(Library library, Procedure procedure, Reachability paths) {
  Limits limits() {
    return library.limits();
  }

  Map<String, Step> steps() {
    return procedure.steps();
  }

  /** The shortest way to a step, empty where it is never reached. */
  List<String> way(Step step) {
    return nearest(step, at -> true).map(paths::way).orElse(List.of());
  }

  /** The nearest node at a step where something is so, if it is ever reached so. */
  Optional<Reachability.Node> nearest(Step step, Predicate<AbstractState> so) {
    return paths.at(step.id()).stream().filter(node -> so.test(node.at())).findFirst();
  }

  /** The turns of the rod, on every way to them. */
  List<Turning> turns() {
    return steps().values().stream()
        .flatMap(
            step ->
                step instanceof Step.TurnRod turn
                    ? paths.at(step.id()).stream().map(node -> new Turning(turn, node))
                    : Stream.empty())
        .toList();
  }
}
