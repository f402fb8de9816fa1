package quarterturn.procedure.check.rule;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Subject;

/** The rule that what is closed to a technician is closed to a beginner too. */
public final class ClosedToOne {
  public static final Rule RULE =
      Rule.ofSteps(
          "closed-to-one",
          "Where the role alone decides, no beginner is led on to work that ends there for a technician.",
          ClosedToOne::prove);

  private ClosedToOne() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (works(proof, way(step.fork(), Role.BEGINNER))
        && ends(proof, way(step.fork(), Role.TECHNICIAN))) {
      found.add(
          step,
          step.id() + " ends for a technician, and leads a beginner on",
          "change the two ways over, or close both");
    }
  }

  private static boolean ends(Proof proof, @Nullable String to) {
    return to != null && proof.steps().get(to) instanceof Step.End;
  }

  private static boolean works(Proof proof, @Nullable String from) {
    return from != null
        && Ways.reach(proof.procedure(), from, any -> true).stream()
            .map(proof.procedure()::step)
            .anyMatch(step -> step.changes() != null || !step.establishes().isEmpty());
  }

  /** Where a role leads, or null where something else decides. */
  private static @Nullable String way(Branch.Fork fork, Role role) {
    Set<Subject> person = Set.of(new Subject.Person());
    for (Branch branch : fork.branches()) {
      if (!branch.when().subjects().equals(person)) {
        return null;
      }
      if (branch.when().holds(subject -> new Cell.Person(role))) {
        return branch.go();
      }
    }
    return fork.otherwise();
  }
}
