package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/**
 * Drops from an abstract state what no longer matters from a step on, so that ways that differ in
 * nothing that matters are one.
 */
final class Forgetting {
  /** The bits of the subjects of which something still matters. */
  private final long[] kept;

  private final long[] open;
  private final List<Alike> alike;
  private final List<Spoiled> spoiled;
  private final List<Quantity> unread;
  private final Set<BenchState.Compared> compared;
  private final boolean pitch;
  private final boolean tuning;
  private final boolean reading;
  private final int count;
  private final @Nullable Domain counted;

  /** The cells of a subject that need not be told apart, by cell. */
  private record Alike(int subject, int[] cells) {}

  /** The cells of a subject that are possible once a quantity's reading is spoiled. */
  private record Spoiled(Quantity quantity, int subject, int cells) {}

  /**
   * What is ahead of the steps of a procedure.
   *
   * @param tuning the steps from which a short wait can follow before the strings are tuned
   * @param reading the steps from which a short wait can follow before relief is read
   */
  record Ahead(Detours detours, Set<String> tuning, Set<String> reading) {
    static Ahead of(Frame frame, Detours detours) {
      int most = frame.library().limits().readingHoldsMinutes();
      return new Ahead(
          detours,
          Ways.waitBefore(frame.procedure(), most, Forgetting::tunes),
          Ways.waitBefore(frame.procedure(), most, Forgetting::reads));
    }
  }

  /** Keeps what matters from a step on, and counts that the step was reached. */
  Forgetting(Frame frame, Liveness live, Ahead ahead, String step) {
    List<Integer> kept = new ArrayList<>();
    List<Alike> alike = new ArrayList<>();
    for (int i = 0; i < frame.domains().size(); i++) {
      Domain domain = frame.domains().get(i);
      Set<Condition> pieces = live.pieces(step, domain);
      if (!pieces.isEmpty()) {
        kept.add(i);
      }
      if (!pieces.isEmpty() && pieces.size() < domain.pieces().size()) {
        alike.add(new Alike(i, domain.alike(pieces)));
      }
    }
    this.kept = frame.layout().all(kept::contains);
    this.open = frame.layout().all(place -> !kept.contains(place));
    this.alike = List.copyOf(alike);
    this.spoiled =
        Stream.of(Quantity.values())
            .flatMap(quantity -> spoiled(frame, quantity))
            .filter(one -> kept.contains(one.subject()))
            .toList();
    List<Quantity> unread = new ArrayList<>(List.of(Quantity.values()));
    unread.removeAll(live.readings(step));
    this.unread = List.copyOf(unread);
    this.compared = live.compared(step);
    this.pitch = ahead.detours().pitchMatters(step);
    this.tuning = ahead.tuning().contains(step);
    this.reading = ahead.reading().contains(step);
    int count = frame.index(new Subject.Count(step));
    boolean counts = kept.contains(count);
    this.count = counts ? count : -1;
    this.counted = counts ? frame.domains().get(count) : null;
  }

  private static boolean tunes(Step step) {
    return step instanceof Step.TurnRod || step.establishes().contains(Fact.AT_PITCH);
  }

  private static boolean reads(Step step) {
    return step instanceof Step.TurnRod
        || (step instanceof Step.Measure measure
            && measure.quantity() == Quantity.RELIEF
            && measure.which() != Which.HIGHEST);
  }

  private static Stream<Spoiled> spoiled(Frame frame, Quantity quantity) {
    return Stream.of(new Subject.Reading(quantity), new Subject.Each(quantity))
        .map(frame::index)
        .filter(place -> place >= 0)
        .map(place -> new Spoiled(quantity, place, readable(frame.domains().get(place))));
  }

  /** The mask of the cells in which something was read. */
  private static int readable(Domain domain) {
    int read = domain.all();
    if (domain.subject() instanceof Subject.Reading reading) {
      read &= ~domain.where(Frame.unread(reading.quantity()));
    }
    return read == 0 ? domain.all() : read;
  }

  /** Turns {@code at} into the state in which the step is reached from {@code from}. */
  void reach(AbstractState from, AbstractState at) {
    at.keep(from, kept, open, unread);
    at.bench(at.bench().keeping(compared));
    if (!pitch) {
      // No string is read before it is tuned anew.
      at.bench(at.bench().offPitch());
    }
    at.sinceTuned(tuning && at.has(Fact.AT_PITCH) ? at.sinceTuned() : 0);
    at.sinceRead(reading && at.held(Quantity.RELIEF) == Freshness.FRESH ? at.sinceRead() : 0);
    if (counted != null) {
      at.mask(count, counted.onward(at.mask(count)));
    }
    for (Spoiled one : spoiled) {
      Freshness held = from.held(one.quantity());
      if (held.compareTo(Freshness.STALE) >= 0 && !held.usable()) {
        at.mask(one.subject(), one.cells());
      }
    }
    for (Alike one : alike) {
      int wide = 0;
      for (int mask = at.mask(one.subject()); mask != 0; mask &= mask - 1) {
        wide |= one.cells()[Integer.numberOfTrailingZeros(mask)];
      }
      at.mask(one.subject(), wide);
    }
  }
}
