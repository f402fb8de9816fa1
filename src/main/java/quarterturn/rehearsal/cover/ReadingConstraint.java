package quarterturn.rehearsal.cover;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;

/** The ways in which a reading may stand to its window so that a condition holds. */
record ReadingConstraint(Quantity quantity, Set<Verdict> verdicts) {
  /**
   * The constraint of a condition on readings of one quantity; null for other conditions.
   *
   * @param holds whether the condition is to hold, or to fail
   */
  static @Nullable ReadingConstraint of(Condition when, boolean holds) {
    return when.match(
        all -> null,
        any -> holds ? either(any) : null,
        not -> of(not.part(), !holds),
        atom -> of(atom, holds));
  }

  /** The constraint of an atom; null for one on a value or on something else than a reading. */
  private static @Nullable ReadingConstraint of(Condition.Atom atom, boolean holds) {
    if (atom instanceof Condition.Against against) {
      return of(against.quantity(), against.verdict(), holds);
    }
    if (atom instanceof Condition.Leans leans && holds) {
      return of(leans.quantity(), Verdict.UNDECIDED, true);
    }
    if (atom instanceof Condition.Near near && holds) {
      return of(near.quantity(), Verdict.UNDECIDED, true);
    }
    return atom instanceof Condition.Strings strings
        ? of(strings.quantity(), strings.verdict(), holds)
        : null;
  }

  private static @Nullable ReadingConstraint either(Condition.Any any) {
    Set<Verdict> verdicts = EnumSet.noneOf(Verdict.class);
    Quantity quantity = null;
    for (Condition part : any.parts()) {
      ReadingConstraint one = of(part, true);
      if (one == null || (quantity != null && quantity != one.quantity())) {
        return null;
      }
      quantity = one.quantity();
      verdicts.addAll(one.verdicts());
    }
    return quantity == null ? null : new ReadingConstraint(quantity, verdicts);
  }

  private static ReadingConstraint of(Quantity quantity, Verdict verdict, boolean holds) {
    EnumSet<Verdict> one = EnumSet.of(verdict);
    return new ReadingConstraint(quantity, holds ? one : EnumSet.complementOf(one));
  }
}
