package quarterturn.procedure;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Predicate;

/** Where the steps of a procedure lead. */
public final class Ways {
  private Ways() {}

  /** Every step that {@code step} can go to. */
  public static Set<String> from(Step step) {
    Set<String> ways = new LinkedHashSet<>();
    if (step instanceof Step.Tell tell) {
      fork(ways, tell.then());
    } else if (step instanceof Step.Choose choose) {
      choose.options().forEach(option -> ways.add(option.go()));
    } else if (step instanceof Step.Measure measure) {
      fork(ways, measure.then());
    } else if (step instanceof Step.Compute compute) {
      fork(ways, compute.then());
    } else if (step instanceof Step.TurnRod turn) {
      ways.addAll(turn.felt().values());
    } else if (step instanceof Step.Wait wait) {
      ways.add(wait.go());
    } else if (step instanceof Step.Call call) {
      fork(ways, call.then());
    } else if (step instanceof Step.Note note) {
      ways.add(note.go());
    } else if (step instanceof Step.Adjust adjust) {
      fork(ways, adjust.then());
    }
    return ways;
  }

  private static void fork(Set<String> ways, Branch.Fork fork) {
    fork.branches().forEach(branch -> ways.add(branch.go()));
    if (fork.otherwise() != null) {
      ways.add(fork.otherwise());
    }
  }

  /**
   * Whether a rod turn can follow from {@code step} on with no relief reading on the lowest string
   * before it, which is the reading that turns rest on.
   */
  public static boolean turnBeforeReading(Procedure procedure, String step) {
    return reaches(procedure, step, turn -> true);
  }

  /** Whether the next rod turn from {@code step} on may be one that takes the last turn back. */
  public static boolean undoNext(Procedure procedure, String step) {
    return reaches(procedure, step, turn -> turn.amount() instanceof Step.Amount.Undo);
  }

  private static boolean reaches(Procedure procedure, String from, Predicate<Step.TurnRod> wanted) {
    Deque<String> open = new ArrayDeque<>(Set.of(from));
    Set<String> seen = new HashSet<>();
    while (!open.isEmpty()) {
      Step next = procedure.step(open.pop());
      if (next instanceof Step.TurnRod turn) {
        if (wanted.test(turn)) {
          return true;
        }
        continue;
      }
      boolean reads = next instanceof Step.Measure measure && measure.which() == Which.LOWEST;
      if (!reads && seen.add(next.id())) {
        open.addAll(from(next));
      }
    }
    return false;
  }
}
