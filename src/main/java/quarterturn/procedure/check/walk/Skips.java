package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Protection;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Role;

/** Finds the steps that one role has to pass and another one is led around. */
public final class Skips {
  private Skips() {}

  /**
   * A step that is skipped.
   *
   * @param fork where the roles part
   * @param skipped the role that is led around it
   * @param way the fork, where that role goes, and a step behind the one that is skipped
   */
  public record Skip(Step fork, Step step, Role skipped, List<String> way) {}

  public static List<Skip> of(Procedure procedure) {
    List<Skip> skips = new ArrayList<>();
    for (Step fork : procedure.steps().values()) {
      Map<Role, Set<String>> ways = ways(fork);
      for (Role passing : ways.keySet()) {
        for (Role skipping : ways.keySet()) {
          if (passing != skipping) {
            skips.addAll(
                skips(
                    procedure,
                    fork,
                    ways.getOrDefault(passing, Set.of()),
                    ways.getOrDefault(skipping, Set.of()),
                    skipping));
          }
        }
      }
    }
    return skips;
  }

  /** The steps that each role can go to from a step that asks for the role. */
  private static Map<Role, Set<String>> ways(Step step) {
    Map<Role, Set<String>> ways = new EnumMap<>(Role.class);
    List<Branch> branches = step.fork().branches();
    if (branches.stream().anyMatch(branch -> branch.when().atoms().anyMatch(Skips::asks))) {
      for (Role role : Role.values()) {
        Set<String> open = new LinkedHashSet<>();
        branches.stream()
            .filter(branch -> can(branch.when(), role, true))
            .forEach(branch -> open.add(branch.go()));
        String otherwise = step.fork().otherwise();
        if (otherwise != null
            && branches.stream().allMatch(branch -> can(branch.when(), role, false))) {
          open.add(otherwise);
        }
        ways.put(role, open);
      }
    }
    return ways;
  }

  private static boolean asks(Condition.Atom atom) {
    return atom instanceof Condition.Is;
  }

  /** Whether a condition can hold, or not hold, where all that is known is the role. */
  private static boolean can(Condition condition, Role role, boolean hold) {
    if (condition instanceof Condition.Not not) {
      return can(not.part(), role, !hold);
    }
    if (condition instanceof Condition.All all) {
      return hold
          ? all.parts().stream().allMatch(part -> can(part, role, true))
          : all.parts().stream().anyMatch(part -> can(part, role, false));
    }
    if (condition instanceof Condition.Any any) {
      return hold
          ? any.parts().stream().anyMatch(part -> can(part, role, true))
          : any.parts().stream().allMatch(part -> can(part, role, false));
    }
    return !(condition instanceof Condition.Is is) || (is.role() == role) == hold;
  }

  /** Whether a step is marked never-skip, or has somebody put a protection on. */
  public static boolean guards(Step step) {
    return step.words().neverSkip()
        || (step instanceof Step.Tell && Protection.worn(step.words().text()));
  }

  private static List<Skip> skips(
      Procedure procedure, Step fork, Set<String> passing, Set<String> around, Role skipping) {
    List<Skip> skips = new ArrayList<>();
    for (Step step : procedure.steps().values()) {
      if (!(step instanceof Step.Wait) && !guards(step)) {
        continue;
      }
      Set<String> behind = reach(procedure, passing, Set.of(fork.id()));
      if (!behind.contains(step.id())) {
        continue;
      }
      Set<String> barred = Set.of(fork.id(), step.id());
      behind.removeAll(reach(procedure, passing, barred));
      behind.remove(step.id());
      behind.retainAll(reach(procedure, around, barred));
      procedure.steps().keySet().stream()
          .filter(behind::contains)
          .filter(id -> !(procedure.step(id) instanceof Step.HandOver))
          .findFirst()
          .ifPresent(
              id ->
                  skips.add(
                      new Skip(
                          fork, step, skipping, List.of(fork.id(), around.iterator().next(), id))));
    }
    return skips;
  }

  private static Set<String> reach(Procedure procedure, Set<String> from, Set<String> barred) {
    Set<String> reached = new HashSet<>();
    from.forEach(
        id -> reached.addAll(Ways.reach(procedure, id, step -> !barred.contains(step.id()))));
    reached.removeAll(barred);
    return reached;
  }
}
