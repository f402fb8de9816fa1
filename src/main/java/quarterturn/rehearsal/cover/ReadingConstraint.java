package quarterturn.rehearsal.cover;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.kind.Quantity;

/** How a reading may stand so that a condition holds. */
record ReadingConstraint(Quantity quantity, Set<Verdict> verdicts) {
  /**
   * Of a condition that is on readings alone, and on one quantity; null for others.
   *
   * @param holds whether it is to hold, or not to
   */
  static @Nullable ReadingConstraint of(Condition when, boolean holds) {
    return when.match(
        all -> null,
        any -> holds ? either(any) : null,
        not -> of(not.part(), !holds),
        atom -> atom.match(STANDS).apply(holds));
  }

  /** By whether it is to hold; null for what is on no reading, or on a value. */
  private static final Condition.Atom.Cases<Function<Boolean, @Nullable ReadingConstraint>> STANDS =
      new Condition.Atom.Cases<>(
          against -> holds -> of(against.quantity(), against.verdict(), holds),
          leans -> holds -> holds ? of(leans.quantity(), Verdict.UNDECIDED, true) : null,
          below -> holds -> null,
          atLeast -> holds -> null,
          differs -> holds -> null,
          repeats -> holds -> null,
          chosen -> holds -> null,
          is -> holds -> null,
          turned -> holds -> null,
          answered -> holds -> null,
          strings -> holds -> of(strings.quantity(), strings.verdict(), holds),
          called -> holds -> null,
          seems -> holds -> null,
          reached -> holds -> null,
          felt -> holds -> null);

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
