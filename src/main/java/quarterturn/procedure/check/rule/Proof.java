package quarterturn.procedure.check.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.check.walk.AbstractState;
import quarterturn.procedure.check.walk.Reachability;

/**
 * What the rules examine to decide: a procedure, its library and the ways through it.
 *
 * @param library everything that was read
 * @param procedure the one to be proven
 * @param paths every way through it
 * @param own whether it is a user's own
 * @param orders what the words of its steps order, by the steps' ids
 * @param ending the steps from which an end can be reached
 */
public record Proof(
    Library library,
    Procedure procedure,
    Reachability paths,
    boolean own,
    Map<String, List<Said>> orders,
    Set<String> ending) {
  /** The proof of a procedure, the words of whose steps are read here once for all rules. */
  public Proof(Library library, Procedure procedure, Reachability paths, boolean own) {
    this(library, procedure, paths, own, Said.in(procedure), Ways.ending(procedure));
  }

  /** What the words of a step order. */
  public List<Said> said(Step step) {
    return orders.getOrDefault(step.id(), List.of());
  }

  /**
   * Whether a step is one of a block that comes with the program, in a sheet of a user's own: what
   * the sheet does not use of it is no fault of the sheet.
   */
  public boolean lent(Step step) {
    String file = step.mark().file();
    return own && (file.startsWith("procedures/blocks/") || file.startsWith("safety/"));
  }

  /** Whether a step turns the rod, itself or in a procedure that it calls. */
  public boolean turns(Step step) {
    return step instanceof Step.TurnRod
        || (step instanceof Step.Call call
            && library.any(library.procedure(call.procedure()), Step.TurnRod.class::isInstance));
  }

  public Limits limits() {
    return library.limits();
  }

  public Map<String, Step> steps() {
    return procedure.steps();
  }

  /** The shortest way to a step, empty where it is never reached. */
  public List<String> way(Step step) {
    return nearest(step, at -> true).map(paths::way).orElse(List.of());
  }

  /** The nearest node at a step whose state is {@code so}, if there is one. */
  public Optional<Reachability.Node> nearest(Step step, Predicate<AbstractState> so) {
    return paths.at(step.id()).stream().filter(node -> so.test(node.at())).findFirst();
  }
}
