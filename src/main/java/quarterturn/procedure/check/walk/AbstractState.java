package quarterturn.procedure.check.walk;

import java.util.Arrays;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.kind.Quantity;

/**
 * What is known at a step on one way to it: facts, readings, and for each subject the cells that
 * are possible, as the bits of a mask. Many real states are one abstract state.
 */
public final class AbstractState {
  private final Layout layout;
  private final long[] masks;
  private BenchState bench;

  /** Whether the day's turning is known not to be used up since the last turn. */
  private boolean dayLeft;

  AbstractState(Layout layout, int[] masks) {
    this(layout, layout.none(), BenchState.NONE, false);
    for (int i = 0; i < masks.length; i++) {
      mask(i, masks[i]);
    }
  }

  private AbstractState(Layout layout, long[] masks, BenchState bench, boolean dayLeft) {
    this.layout = layout;
    this.masks = masks;
    this.bench = bench;
    this.dayLeft = dayLeft;
  }

  /** A copy to be changed. */
  AbstractState copy() {
    return new AbstractState(layout, masks.clone(), bench, dayLeft);
  }

  /** This state with another bench. */
  AbstractState with(BenchState other) {
    return new AbstractState(layout, masks.clone(), other, dayLeft);
  }

  BenchState bench() {
    return bench;
  }

  void bench(BenchState now) {
    bench = now;
  }

  public boolean has(Fact fact) {
    return bench.has(fact);
  }

  public Freshness held(Quantity quantity) {
    return bench.held(quantity);
  }

  public boolean turned() {
    return bench.turned();
  }

  /**
   * Takes over from another state only what matters further on.
   *
   * @param kept the bits of the subjects of which it is still known
   * @param open the bits of all that is possible of the others
   * @param never the readings that are as if nobody had asked for them
   */
  void keep(AbstractState other, long[] kept, long[] open, Collection<Quantity> never) {
    bench = other.bench.without(never);
    dayLeft = other.dayLeft;
    for (int i = 0; i < masks.length; i++) {
      masks[i] = other.masks[i] & kept[i] | open[i];
    }
  }

  /** Whether the day's turning is known not to be used up since the last turn. */
  public boolean dayLeft() {
    return dayLeft;
  }

  public void dayLeft(boolean left) {
    dayLeft = left;
  }

  /** The cells of a subject that are possible. */
  public int mask(int subject) {
    return layout.mask(masks, subject);
  }

  public void mask(int subject, int mask) {
    layout.mask(masks, subject, mask);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof AbstractState s
        && bench.equals(s.bench)
        && dayLeft == s.dayLeft
        && Arrays.equals(masks, s.masks);
  }

  @Override
  public int hashCode() {
    // Most masks are single bits, which a small factor would heap up in few places of a table.
    long hash = (bench.bits() << 1 | (dayLeft ? 1 : 0)) * 0x9E3779B97F4A7C15L;
    for (long mask : masks) {
      hash = (hash ^ hash >>> 32 ^ mask) * 0x9E3779B97F4A7C15L;
    }
    return Long.hashCode(hash);
  }
}
