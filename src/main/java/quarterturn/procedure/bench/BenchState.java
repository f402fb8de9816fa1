package quarterturn.procedure.bench;

import java.util.Collection;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/**
 * What is true of the bench, what there is of the reading of each quantity, and whether the rod was
 * turned. Each method says what something that happens makes of it: the rules by which a session
 * goes on and a procedure is proven.
 *
 * @param bits the facts, three bits for each quantity's {@link Freshness}, and one for the rod
 */
public record BenchState(long bits) {
  private static final int READING_BITS = 3;
  private static final int READINGS = Fact.values().length;
  private static final long TURNED = 1L << READINGS + READING_BITS * Quantity.values().length;
  private static final Freshness[] HELD = Freshness.values();

  /** Nothing is known, and nothing was done. */
  public static final BenchState NONE = new BenchState(0);

  public boolean has(Fact fact) {
    return (bits & 1L << fact.ordinal()) != 0;
  }

  public boolean hasAll(Collection<Fact> facts) {
    return facts.stream().allMatch(this::has);
  }

  /** What there is of the last reading of a quantity; of relief, on the lowest string. */
  public Freshness held(Quantity quantity) {
    return HELD[(int) (bits >> place(quantity) & 7)];
  }

  public boolean turned() {
    return (bits & TURNED) != 0;
  }

  private static int place(Quantity quantity) {
    return READINGS + READING_BITS * quantity.ordinal();
  }

  /** As if nobody had asked for some readings. */
  public BenchState without(Collection<Quantity> readings) {
    return new BenchState(bits & ~readings.stream().mapToLong(q -> 7L << place(q)).sum());
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

  /** The strings are no more at pitch, or nobody knows. */
  public BenchState offPitch() {
    return without(Fact.AT_PITCH).without(Fact.SETTLED);
  }

  /** Others may have tuned or slackened the strings. */
  public BenchState unknownPitch() {
    return offPitch().without(Fact.DETUNED);
  }

  /** What was read of a quantity no longer holds. */
  public BenchState spoiled(Quantity quantity) {
    return held(quantity).compareTo(Freshness.STALE) > 0 ? with(quantity, Freshness.STALE) : this;
  }

  /** Nothing that was read holds any more. */
  public BenchState spoiled() {
    BenchState now = this;
    for (Quantity quantity : Quantity.values()) {
      now = now.spoiled(quantity);
    }
    return now;
  }

  /** Confirmed or chosen. Only a wait can settle a neck, so that is left out. */
  public BenchState established(Set<Fact> facts) {
    BenchState now = this;
    for (Fact fact : facts) {
      now = now.established(fact);
    }
    return now;
  }

  /**
   * Strings at pitch are not detuned and not settled yet; a neck that is loose in its pocket holds
   * no pitch; seated anew, it need not come back to what was read.
   */
  private BenchState established(Fact fact) {
    return switch (fact) {
      case AT_PITCH -> {
        BenchState tuned = offPitch().without(Fact.DETUNED);
        yield has(Fact.NECK_LOOSE) ? tuned : tuned.with(Fact.AT_PITCH);
      }
      case DETUNED -> offPitch().with(Fact.DETUNED);
      case NECK_LOOSE -> offPitch().without(Fact.NECK_FAST).with(Fact.NECK_LOOSE);
      case NECK_FAST -> without(Fact.NECK_LOOSE).with(Fact.NECK_FAST).spoiled();
      case ROD_IDENTIFIED, KEY_FITS -> with(fact);
      case SETTLED -> this;
    };
  }

  /** The instrument was changed, by the id of a change; null for none. */
  public BenchState changed(Results results, @Nullable String change) {
    BenchState now = this;
    for (Quantity quantity : Quantity.values()) {
      now = results.spoils(change, quantity) ? now.spoiled(quantity) : now;
    }
    return results.spoils(change, Results.PITCH) ? now.offPitch() : now;
  }

  /** Something was confirmed or chosen that makes a change, or none, and establishes facts. */
  public BenchState done(Results results, @Nullable String change, Set<Fact> facts) {
    return changed(results, change).established(facts);
  }

  /** A step was confirmed. */
  public BenchState told(Results results, Step.Tell step) {
    return done(results, step.changes(), step.establishes());
  }

  /** An option was chosen. */
  public BenchState chosen(Results results, Step.Option option) {
    return done(results, option.changes(), option.establishes());
  }

  /** The screws of the strings that were out of their windows were set. */
  public BenchState adjusted(Results results, Adjustment what) {
    return changed(results, what.word());
  }

  /** The rod was turned, or tried to be. */
  public BenchState turned(Results results, boolean moved) {
    BenchState now = moved ? changed(results, Results.ROD).offPitch() : this;
    return now.with(Quantity.RELIEF, Freshness.AFTER_TURN).with(true);
  }

  /**
   * Something was read. Strings are read at pitch, and relief once the neck has settled; the
   * highest string's relief is only held against the lowest string's.
   *
   * @param timely whether tuning was not too long ago
   */
  public BenchState read(Quantity quantity, @Nullable Which which, boolean timely) {
    if (quantity == Quantity.RELIEF && which == Which.HIGHEST) {
      return this;
    }
    return with(quantity, counts(quantity, timely) ? Freshness.FRESH : Freshness.UNCOUNTED);
  }

  /** Whether a reading taken now counts. */
  public boolean counts(Quantity quantity, boolean timely) {
    return quantity == Quantity.RELIEF
        ? has(Fact.AT_PITCH) && has(Fact.SETTLED) && timely
        : !quantity.onString() || has(Fact.AT_PITCH);
  }

  /**
   * Nothing could be read; an earlier reading is still there. Where each string is read, what was
   * spoiled before is not used any more.
   */
  public BenchState missed(Quantity quantity, @Nullable Which which) {
    boolean unused = which == Which.EACH && !held(quantity).usable();
    return unused || held(quantity) == Freshness.NEVER ? with(quantity, Freshness.MISSED) : this;
  }

  /**
   * A wait is over.
   *
   * @param enough whether it was long enough after tuning for the neck to have settled
   */
  public BenchState waited(Step.Wait wait, boolean enough) {
    BenchState now = established(wait.establishes());
    now = enough && wait.establishes().contains(Fact.SETTLED) ? now.with(Fact.SETTLED) : now;
    return wait.rest() ? now.spoiled() : now;
  }

  /** Back from a break: readings are from before it, and pitch may have drifted. */
  public BenchState back(boolean drifted) {
    BenchState now = drifted ? offPitch() : this;
    for (Quantity quantity : Quantity.values()) {
      now = now.held(quantity) == Freshness.FRESH ? now.with(quantity, Freshness.AGED) : now;
    }
    return now;
  }
}
