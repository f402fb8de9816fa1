package quarterturn.procedure.check.walk;

import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/** Which steps lead where, whatever is known. */
public final class FlowGraph {
  private FlowGraph() {}

  /** Whether an end can be reached. */
  public static boolean ends(Procedure procedure, String from) {
    return reach(procedure, from, id -> true).stream()
        .map(procedure.steps()::get)
        .anyMatch(Step.End.class::isInstance);
  }

  /**
   * Every step that can be reached from one, itself included.
   *
   * @param through only steps that are so are passed
   */
  static Set<String> reach(Procedure procedure, String from, Predicate<String> through) {
    Set<String> reached = Ways.reach(procedure, from, step -> through.test(step.id()));
    reached.removeIf(through.negate());
    return reached;
  }
}
