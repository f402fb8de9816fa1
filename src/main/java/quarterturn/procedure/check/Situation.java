package quarterturn.procedure.check;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Quantity;

/**
 * What is known at a step on one way to it: facts, readings, and for each {@link Subject} the cells
 * that are possible, as the bits of a mask. Many real states are one situation.
 */
final class Situation {
  private static final int READING_BITS = 3;
  private static final int READINGS = Fact.values().length;
  private static final int TURNED = READINGS + READING_BITS * Quantity.values().length;
  private static final int DAY_LEFT = TURNED + 1;
  private static final Held[] HELD = Held.values();

  private final Layout layout;
  private final long[] masks;
  private long bits;

  Situation(Layout layout, int[] masks) {
    this(layout, layout.none(), 0);
    for (int i = 0; i < masks.length; i++) {
      mask(i, masks[i]);
    }
  }

  private Situation(Layout layout, long[] masks, long bits) {
    this.layout = layout;
    this.masks = masks;
    this.bits = bits;
  }

  /** A copy to be changed. */
  Situation copy() {
    return new Situation(layout, masks.clone(), bits);
  }

  boolean has(Fact fact) {
    return (bits >> fact.ordinal() & 1) == 1;
  }

  Set<Fact> facts() {
    EnumSet<Fact> facts = EnumSet.noneOf(Fact.class);
    for (Fact fact : Fact.values()) {
      if (has(fact)) {
        facts.add(fact);
      }
    }
    return facts;
  }

  void facts(Set<Fact> facts) {
    bits &= -1L << READINGS;
    facts.forEach(fact -> bits |= 1L << fact.ordinal());
  }

  void withdraw(Fact... withdrawn) {
    for (Fact fact : withdrawn) {
      bits &= ~(1L << fact.ordinal());
    }
  }

  Held held(Quantity quantity) {
    return HELD[(int) (bits >> place(quantity) & 7)];
  }

  void held(Quantity quantity, Held held) {
    bits = bits & ~(7L << place(quantity)) | (long) held.ordinal() << place(quantity);
  }

  private static int place(Quantity quantity) {
    return READINGS + READING_BITS * quantity.ordinal();
  }

  /** The bits that tell how the readings of some quantities are held. */
  static long readings(Collection<Quantity> quantities) {
    return quantities.stream().mapToLong(quantity -> 7L << place(quantity)).sum();
  }

  /**
   * Becomes like another, and knows nothing but this.
   *
   * @param kept the bits of the subjects of which it is still known
   * @param open the bits of all that is possible of the others
   * @param never bits of the readings that are as if nobody had asked for them
   */
  void keep(Situation other, long[] kept, long[] open, long never) {
    bits = other.bits & ~never;
    for (int i = 0; i < masks.length; i++) {
      masks[i] = other.masks[i] & kept[i] | open[i];
    }
  }

  /** What was read of a quantity no longer holds. */
  void spoil(Quantity quantity) {
    if (held(quantity).compareTo(Held.STALE) > 0) {
      held(quantity, Held.STALE);
    }
  }

  boolean turned() {
    return (bits >> TURNED & 1) == 1;
  }

  void turned(boolean turned) {
    bits = bits & ~(1L << TURNED) | (turned ? 1L << TURNED : 0);
  }

  /** Whether it was asked, since the last turn, if the day's turning is used up. */
  boolean dayLeft() {
    return (bits >> DAY_LEFT & 1) == 1;
  }

  void dayLeft(boolean left) {
    bits = bits & ~(1L << DAY_LEFT) | (left ? 1L << DAY_LEFT : 0);
  }

  /** The cells of a subject that are possible. */
  int mask(int subject) {
    return layout.mask(masks, subject);
  }

  void mask(int subject, int mask) {
    layout.mask(masks, subject, mask);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Situation s && bits == s.bits && Arrays.equals(masks, s.masks);
  }

  @Override
  public int hashCode() {
    // Most masks are single bits, which a small factor would heap up in few places of a table.
    long hash = bits * 0x9E3779B97F4A7C15L;
    for (long mask : masks) {
      hash = (hash ^ hash >>> 32 ^ mask) * 0x9E3779B97F4A7C15L;
    }
    return Long.hashCode(hash);
  }
}
