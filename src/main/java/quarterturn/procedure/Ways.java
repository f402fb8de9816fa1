package quarterturn.procedure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Where the steps of a procedure lead. */
public final class Ways {
  private Ways() {}

  /** Every step that {@code step} can go to. */
  public static Set<String> from(Step step) {
    Set<String> ways = new LinkedHashSet<>();
    Branch.Fork fork = fork(step);
    if (fork != null) {
      fork(ways, fork);
    } else if (step instanceof Step.Choose choose) {
      choose.options().forEach(option -> ways.add(option.go()));
    } else if (step instanceof Step.TurnRod turn) {
      ways.addAll(turn.felt().values());
    } else if (step instanceof Step.Wait wait) {
      ways.add(wait.go());
    } else if (step instanceof Step.Note note) {
      ways.add(note.go());
    } else if (step instanceof Step.Pause pause) {
      ways.add(pause.go());
    }
    return ways;
  }

  /** Every way on in a procedure, in the file's order. */
  public static List<Way> of(Procedure procedure) {
    return procedure.steps().values().stream()
        .flatMap(step -> of(procedure.id(), step).stream())
        .toList();
  }

  /**
   * Every way on from {@code step}: options in their order, feels in the order of {@link Feel},
   * branches in their order and "otherwise" last. Two that lead to the same step stand apart.
   */
  public static List<Way> of(String procedure, Step step) {
    List<Way> ways = new ArrayList<>();
    if (step instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        ways.add(new Way(procedure, step.id(), option.id(), option.go()));
      }
    } else if (step instanceof Step.TurnRod turn) {
      for (Feel feel : Feel.values()) {
        String go = turn.felt().get(feel);
        if (go != null) {
          ways.add(new Way(procedure, step.id(), feel.word(), go));
        }
      }
    } else if (fork(step) != null) {
      branches(procedure, step, ways);
    } else {
      from(step).forEach(go -> ways.add(new Way(procedure, step.id(), "", go)));
    }
    return List.copyOf(ways);
  }

  private static void branches(String procedure, Step step, List<Way> ways) {
    Branch.Fork fork = fork(step);
    if (fork == null) {
      return;
    }
    Set<String> labels = new HashSet<>();
    for (Branch branch : fork.branches()) {
      String words = ConditionWords.of(branch.when());
      String label = labels.add(words) ? words : words + ", branch " + (ways.size() + 1);
      ways.add(new Way(procedure, step.id(), label, branch.go()));
    }
    if (fork.otherwise() != null) {
      ways.add(new Way(procedure, step.id(), ways.isEmpty() ? "" : "otherwise", fork.otherwise()));
    }
  }

  /** The branches of a step that has some, or null. */
  public static Branch.@Nullable Fork fork(Step step) {
    if (step instanceof Step.Tell tell) {
      return tell.then();
    } else if (step instanceof Step.Measure measure) {
      return measure.then();
    } else if (step instanceof Step.Compute compute) {
      return compute.then();
    } else if (step instanceof Step.Call call) {
      return call.then();
    }
    return step instanceof Step.Adjust adjust ? adjust.then() : null;
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

  /** Whether a reading on a string can follow from {@code step} on with no tuning before it. */
  public static boolean readingBeforeTuning(Procedure procedure, String step) {
    Deque<String> open = new ArrayDeque<>(Set.of(step));
    Set<String> seen = new HashSet<>();
    while (!open.isEmpty()) {
      Step next = procedure.step(open.pop());
      if (next instanceof Step.Measure measure && measure.quantity().onString()) {
        return true;
      }
      boolean tunes = next instanceof Step.Tell t && t.establishes().contains(Fact.AT_PITCH);
      if (!tunes && seen.add(next.id())) {
        open.addAll(from(next));
      }
    }
    return false;
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
