package quarterturn.procedure.bench;

import java.util.Collection;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Results;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/**
 * The state of a bench: the facts that hold, how fresh the reading of each quantity is, and whether
 * the rod was turned. Each method returns the state after something has happened: the rules by
 * which a session goes on and a procedure is proven.
 *
 * @param bits the facts, three bits for each quantity's {@link Freshness}, one for the rod, and
 *     four for the strings on which relief was read since anything changed it
 */
public record BenchState(long bits) {
  private static final int READING_BITS = 3;
  private static final int READINGS = Fact.values().length;
  private static final long TURNED = 1L << READINGS + READING_BITS * Quantity.values().length;
  private static final int COMPARED = Long.numberOfTrailingZeros(TURNED) + 1;
  private static final Freshness[] HELD = Freshness.values();

  /** The state in which nothing is known and nothing was done. */
  public static final BenchState NONE = new BenchState(0);

  public boolean has(Fact fact) {
    return (bits & 1L << fact.ordinal()) != 0;
  }

  public boolean hasAll(Collection<Fact> facts) {
    return facts.stream().allMatch(this::has);
  }

  /** How fresh the last reading of a quantity is; of relief, on the lowest string. */
  public Freshness held(Quantity quantity) {
    return HELD[(int) (bits >> place(quantity) & 7)];
  }

  public boolean turned() {
    return (bits & TURNED) != 0;
  }

  /** What is known of the strings on which relief was read since anything changed it. */
  public enum Compared {
    /** The lowest string was the last one read. */
    LOWEST_LAST,
    /** The highest string was the last one read. */
    HIGHEST_LAST,
    /** The last two readings were taken on one string. */
    TWICE;

    private long bit() {
      return 1L << COMPARED + ordinal();
    }
  }

  public boolean has(Compared one) {
    return (bits & one.bit()) != 0;
  }

  /** This state with no more known of the strings that were read than this. */
  public BenchState keeping(Set<Compared> kept) {
    BenchState now = this;
    for (Compared one : Compared.values()) {
      now = kept.contains(one) ? now : now.without(one);
    }
    return now;
  }

  private BenchState with(Compared one) {
    return new BenchState(bits | one.bit());
  }

  private BenchState without(Compared one) {
    return new BenchState(bits & ~one.bit());
  }

  /** This state once relief was read on the highest string, or on the lowest one. */
  private BenchState readOn(boolean highest) {
    Compared last = highest ? Compared.HIGHEST_LAST : Compared.LOWEST_LAST;
    BenchState now = keeping(Set.of());
    return (has(last) ? now.with(Compared.TWICE) : now).with(last);
  }

  private static int place(Quantity quantity) {
    return READINGS + READING_BITS * quantity.ordinal();
  }

  /** This state as if nobody had asked for {@code readings}. */
  public BenchState without(Collection<Quantity> readings) {
    long left = bits;
    for (Quantity quantity : readings) {
      left &= ~(7L << place(quantity));
    }
    return new BenchState(left);
  }

  public BenchState with(Quantity quantity, Freshness held) {
    return new BenchState(
        bits & ~(7L << place(quantity)) | (long) held.ordinal() << place(quantity));
  }

  public BenchState with(boolean turned) {
    return new BenchState(turned ? bits | TURNED : bits & ~TURNED);
  }

  private BenchState with(Fact fact) {
    return new BenchState(bits | 1L << fact.ordinal());
  }

  private BenchState without(Fact fact) {
    return new BenchState(bits & ~(1L << fact.ordinal()));
  }

  /** This state once the strings are no longer known to be at pitch. */
  public BenchState offPitch() {
    return without(Fact.AT_PITCH).without(Fact.SETTLED);
  }

  /** This state once others may have tuned or slackened the strings. */
  public BenchState unknownPitch() {
    return offPitch().without(Fact.DETUNED);
  }

  /** This state once the reading of a quantity no longer holds. */
  public BenchState spoiled(Quantity quantity) {
    return held(quantity).compareTo(Freshness.STALE) > 0 ? with(quantity, Freshness.STALE) : this;
  }

  /** This state once no reading holds any more. */
  public BenchState spoiled() {
    BenchState now = this;
    for (Quantity quantity : Quantity.values()) {
      now = now.spoiled(quantity);
    }
    return now;
  }

  /**
   * This state once some facts were confirmed or chosen. That a neck has settled is left out, since
   * only a wait can establish it.
   */
  public BenchState established(Set<Fact> facts) {
    BenchState now = this;
    for (Fact fact : facts) {
      now = now.established(fact);
    }
    return now;
  }

  /**
   * This state with one more fact and what follows from it: strings at pitch are not detuned and
   * not settled yet; a neck that is loose in its pocket holds no pitch; seated anew, it need not
   * come back to what was read.
   */
  private BenchState established(Fact fact) {
    return switch (fact) {
      case AT_PITCH -> {
        BenchState tuned = offPitch().without(Fact.DETUNED);
        yield has(Fact.NECK_LOOSE) ? tuned : tuned.with(Fact.AT_PITCH);
      }
      case DETUNED -> offPitch().with(Fact.DETUNED);
      case NECK_LOOSE -> offPitch().without(Fact.NECK_FAST).with(Fact.NECK_LOOSE);
      case NECK_FAST -> without(Fact.NECK_LOOSE).with(Fact.NECK_FAST).spoiled().keeping(Set.of());
      case ROD_IDENTIFIED, KEY_FITS, ROD_TWO_WAY -> with(fact);
      case SETTLED -> this;
    };
  }

  /** This state after a change of this id to the instrument; null for none. */
  public BenchState changed(Results results, @Nullable String change) {
    BenchState now = this;
    for (Quantity quantity : Quantity.values()) {
      now = results.spoils(change, quantity) ? now.spoiled(quantity) : now;
    }
    now = results.spoils(change, Quantity.RELIEF) ? now.keeping(Set.of()) : now;
    return results.spoils(change, Results.PITCH) ? now.offPitch() : now;
  }

  /**
   * This state after a confirmation or choice that makes a change, or none, and establishes facts.
   */
  public BenchState done(Results results, @Nullable String change, Set<Fact> facts) {
    return changed(results, change).established(facts);
  }

  /** This state once a step was confirmed. */
  public BenchState told(Results results, Step.Tell step) {
    return done(results, step.changes(), step.establishes());
  }

  /** This state once an option was chosen. */
  public BenchState chosen(Results results, Step.Option option) {
    return done(results, option.changes(), option.establishes());
  }

  /** This state once the strings that were out of their windows were set. */
  public BenchState adjusted(Results results, Adjustment what) {
    return changed(results, what.word());
  }

  /** This state once the rod was turned, or tried to be, where {@code moved} is false. */
  public BenchState turned(Results results, boolean moved) {
    BenchState now = moved ? changed(results, Results.ROD).offPitch() : this;
    return now.with(Quantity.RELIEF, Freshness.AFTER_TURN).with(true);
  }

  /**
   * This state after a reading. Strings are read at pitch, and relief once the neck has settled;
   * the highest string's relief is only compared with the lowest string's.
   *
   * @param timely whether tuning was not too long ago
   */
  public BenchState read(Quantity quantity, @Nullable Which which, boolean timely) {
    boolean highest = which == Which.HIGHEST;
    BenchState now = quantity == Quantity.RELIEF ? readOn(highest) : this;
    return quantity == Quantity.RELIEF && highest
        ? now
        : now.with(quantity, counts(quantity, timely) ? Freshness.FRESH : Freshness.UNCOUNTED);
  }

  /** Whether a reading taken now counts. */
  public boolean counts(Quantity quantity, boolean timely) {
    return quantity == Quantity.RELIEF
        ? has(Fact.AT_PITCH) && has(Fact.SETTLED) && timely
        : !quantity.onString() || has(Fact.AT_PITCH);
  }

  /**
   * This state where nothing could be read and an earlier reading is kept. Where each string is
   * read, a spoiled reading is not used any more.
   */
  public BenchState missed(Quantity quantity, @Nullable Which which) {
    if (compares(quantity, which)) {
      return this;
    }
    boolean unused = which == Which.EACH && !held(quantity).usable();
    return unused || held(quantity) == Freshness.NEVER ? with(quantity, Freshness.MISSED) : this;
  }

  /**
   * This state after a wait.
   *
   * @param enough whether it was long enough after tuning for the neck to have settled
   */
  public BenchState waited(Step.Wait wait, boolean enough) {
    BenchState now = established(wait.establishes());
    now = enough && wait.establishes().contains(Fact.SETTLED) ? now.with(Fact.SETTLED) : now;
    return wait.rest() ? now.spoiled() : now;
  }

  /** Whether a step gives something that can go on holding: facts, or a reading. */
  public static boolean lasting(Step step) {
    return step instanceof Step.Measure || (!given(step).isEmpty() && changes(step) == null);
  }

  /**
   * Whether a step that is done once, or a wait that may be skipped, is passed over, since all that
   * it gives holds already.
   */
  public boolean passes(Step step) {
    boolean skipped = step instanceof Step.Wait wait && wait.words().shortcut() != null;
    return (Shortcut.once(step) || skipped)
        && lasting(step)
        && hasAll(given(step))
        && (!(step instanceof Step.Measure measure) || holds(measure));
  }

  private boolean holds(Step.Measure measure) {
    boolean compares = compares(measure.quantity(), measure.which());
    return held(measure.quantity()) == Freshness.FRESH && (!compares || has(Compared.HIGHEST_LAST));
  }

  private static Set<Fact> given(Step step) {
    return step instanceof Step.Tell tell
        ? tell.establishes()
        : step instanceof Step.Wait wait && !wait.rest() ? wait.establishes() : Set.of();
  }

  private static @Nullable String changes(Step step) {
    return step instanceof Step.Tell tell ? tell.changes() : null;
  }

  /** Whether a reading is only held against another one. */
  private static boolean compares(Quantity quantity, @Nullable Which which) {
    return quantity == Quantity.RELIEF && which == Which.HIGHEST;
  }

  /** This state after a break: readings are from before it, and pitch may have drifted. */
  public BenchState back(boolean drifted) {
    BenchState now = drifted ? offPitch() : this;
    for (Quantity quantity : Quantity.values()) {
      now = now.held(quantity) == Freshness.FRESH ? now.with(quantity, Freshness.AGED) : now;
    }
    return now;
  }
}
