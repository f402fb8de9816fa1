package quarterturn.procedure.check.walk;

import java.util.Arrays;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.BenchState.Compared;
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

  /** Whether the rod felt as if it must not be turned again. */
  private boolean stopped;

  /** Minutes of waits since the strings were tuned. */
  private int sinceTuned;

  /** Minutes of waits since relief was read. */
  private int sinceRead;

  AbstractState(Layout layout, int[] masks) {
    this(layout, layout.none(), BenchState.NONE);
    for (int i = 0; i < masks.length; i++) {
      mask(i, masks[i]);
    }
  }

  private AbstractState(Layout layout, long[] masks, BenchState bench) {
    this.layout = layout;
    this.masks = masks;
    this.bench = bench;
  }

  /** A copy to be changed. */
  AbstractState copy() {
    return with(bench);
  }

  /** This state with another bench. */
  AbstractState with(BenchState other) {
    AbstractState with = new AbstractState(layout, masks.clone(), other);
    with.takeFlags(this);
    return with;
  }

  private void takeFlags(AbstractState other) {
    dayLeft = other.dayLeft;
    stopped = other.stopped;
    sinceTuned = other.sinceTuned;
    sinceRead = other.sinceRead;
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

  public boolean has(Compared one) {
    return bench.has(one);
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
    takeFlags(other);
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

  /** Whether the rod felt as if it must not be turned again. */
  public boolean stopped() {
    return stopped;
  }

  void stop() {
    stopped = true;
  }

  int sinceTuned() {
    return sinceTuned;
  }

  void sinceTuned(int minutes) {
    sinceTuned = minutes;
  }

  int sinceRead() {
    return sinceRead;
  }

  void sinceRead(int minutes) {
    sinceRead = minutes;
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
        && stopped == s.stopped
        && sinceTuned == s.sinceTuned
        && sinceRead == s.sinceRead
        && Arrays.equals(masks, s.masks);
  }

  @Override
  public int hashCode() {
    // Most masks are single bits, which a small factor would heap up in few places of a table.
    int flags = (dayLeft ? 1 : 0) | (stopped ? 2 : 0) | sinceTuned << 2 | sinceRead << 12;
    long hash = (bench.bits() << 23 ^ bench.bits() ^ flags) * 0x9E3779B97F4A7C15L;
    for (long mask : masks) {
      hash = (hash ^ hash >>> 32 ^ mask) * 0x9E3779B97F4A7C15L;
    }
    return Long.hashCode(hash);
  }
}
