package quarterturn.procedure.check.walk;

import java.util.EnumSet;
import java.util.Set;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;

/** Finds the readings that a step rests on, taken before it. */
public final class Uses {
  private Uses() {}

  /**
   * The quantities that a step's conditions, text and turn rest on, not the one it takes itself.
   */
  public static Set<Quantity> of(Step step) {
    Set<Quantity> used = decided(step);
    boolean says = says(step, Blank.READING) || says(step, Blank.NEXT_TURN);
    if (step instanceof Step.TurnRod || says) {
      used.add(Quantity.RELIEF);
    }
    return used;
  }

  /** The quantities that a step's conditions rest on. */
  public static Set<Quantity> decided(Step step) {
    Set<Quantity> used = EnumSet.noneOf(Quantity.class);
    step.fork().branches().forEach(branch -> add(used, branch.when()));
    if (step instanceof Step.Adjust adjust) {
      used.add(adjust.adjustment().quantity());
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
    for (Subject subject : condition.subjects()) {
      if (subject instanceof Subject.OfQuantity read) {
        used.add(read.quantity());
        if (read.quantity().ofPart()) {
          // What is right for a part follows from the relief.
          used.add(Quantity.RELIEF);
        }
      }
    }
  }

  /** Whether a step's words have a blank. */
  static boolean says(Step step, Blank blank) {
    String written = "{" + blank.word() + "}";
    return step.words().all().anyMatch(text -> text.contains(written));
  }
}
