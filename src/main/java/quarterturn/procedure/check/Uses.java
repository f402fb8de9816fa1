package quarterturn.procedure.check;

import java.util.EnumSet;
import java.util.Set;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;

/** The readings that a step rests on, taken before it. */
final class Uses {
  private Uses() {}

  /** Those its conditions, its text and its turn rest on, not the one it takes itself. */
  static Set<Quantity> of(Step step) {
    Set<Quantity> used = decided(step);
    if (step instanceof Step.TurnRod || says(step, Blank.READING)) {
      used.add(Quantity.RELIEF);
    }
    return used;
  }

  /** Those its conditions rest on. */
  static Set<Quantity> decided(Step step) {
    Set<Quantity> used = EnumSet.noneOf(Quantity.class);
    Branch.Fork fork = Frame.fork(step);
    if (fork != null) {
      fork.branches().forEach(branch -> add(used, branch.when()));
    }
    if (step instanceof Step.Measure measure) {
      used.remove(measure.quantity());
    }
    if (step.words().expects() != null) {
      add(used, step.words().expects());
    }
    return used;
  }

  private static void add(Set<Quantity> used, Condition condition) {
    Subject.subjects(condition).forEach(subject -> add(used, subject));
  }

  private static void add(Set<Quantity> used, Subject subject) {
    if (subject instanceof Subject.Reading reading) {
      used.add(reading.quantity());
    } else if (subject instanceof Subject.Each each) {
      used.add(each.quantity());
    } else if (subject instanceof Subject.Differing differing) {
      used.add(differing.quantity());
    } else if (subject instanceof Subject.Repeating repeating) {
      used.add(repeating.quantity());
    }
  }

  /** Whether a step's words have a blank. */
  static boolean says(Step step, Blank blank) {
    String written = "{" + blank.word() + "}";
    String brief = step.words().brief();
    return step.words().text().contains(written) || (brief != null && brief.contains(written));
  }
}
