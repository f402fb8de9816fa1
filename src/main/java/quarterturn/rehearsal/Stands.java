package quarterturn.rehearsal;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Verdict;

/** How a reading may stand so that a condition holds. */
record Stands(Quantity quantity, Set<Verdict> verdicts) {
  /**
   * Of a condition that is on readings alone, and on one quantity; null for others.
   *
   * @param holds whether it is to hold, or not to
   */
  static @Nullable Stands of(Condition when, boolean holds) {
    if (when instanceof Condition.Against against) {
      return of(against.quantity(), against.verdict(), holds);
    } else if (when instanceof Condition.Strings strings) {
      return of(strings.quantity(), strings.verdict(), holds);
    } else if (when instanceof Condition.Leans leans) {
      return holds ? of(leans.quantity(), Verdict.UNDECIDED, true) : null;
    } else if (when instanceof Condition.Not not) {
      return of(not.part(), !holds);
    } else if (when instanceof Condition.Any any && holds) {
      return either(any);
    }
    return null;
  }

  private static @Nullable Stands either(Condition.Any any) {
    Set<Verdict> verdicts = EnumSet.noneOf(Verdict.class);
    Quantity quantity = null;
    for (Condition part : any.parts()) {
      Stands one = of(part, true);
      if (one == null || (quantity != null && quantity != one.quantity())) {
        return null;
      }
      quantity = one.quantity();
      verdicts.addAll(one.verdicts());
    }
    return quantity == null ? null : new Stands(quantity, verdicts);
  }

  private static Stands of(Quantity quantity, Verdict verdict, boolean holds) {
    EnumSet<Verdict> one = EnumSet.of(verdict);
    return new Stands(quantity, holds ? one : EnumSet.complementOf(one));
  }
}
