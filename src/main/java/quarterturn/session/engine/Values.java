package quarterturn.session.engine;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.EvenBow;
import quarterturn.craft.Window;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.unit.Bracket;

/** Finds the first and last readings of a string, and how they stand to their window. */
final class Values {
  private static final double SLACK = 1e-6;

  private Values() {}

  /**
   * The last reading of a quantity in this session, or null.
   *
   * @param string the note of the string, or null for any string
   */
  static Event.@Nullable Read last(State state, Quantity quantity, @Nullable String string) {
    Reading last = lastReading(state, quantity, string);
    return last == null ? null : last.read();
  }

  /** The first reading of a quantity on a string in this session, or null. */
  static Event.@Nullable Read first(State state, Quantity quantity, String string) {
    return state.history().readings().on(quantity, string).stream()
        .map(Reading::read)
        .filter(read -> !read.missing())
        .findFirst()
        .orElse(null);
  }

  private static @Nullable Reading lastReading(
      State state, Quantity quantity, @Nullable String string) {
    List<Reading> readings = state.history().readings().on(quantity, string);
    return Lists.last(readings, reading -> !reading.read().missing());
  }

  /**
   * The window of a quantity on a string; null where there is none. That of a part of the bow
   * follows from the string's relief, or else the lowest string's, and from the gauge.
   *
   * @param index 0 for the lowest string
   * @param gauge the step of the gauge, in the quantity's unit
   */
  static @Nullable Window window(
      State state,
      Results results,
      Kind kind,
      Style style,
      Quantity quantity,
      int index,
      double gauge) {
    if (!quantity.ofPart()) {
      return kind.windows().containsKey(quantity)
          ? kind.target(quantity, style, index).window()
          : null;
    }
    Event.Read own = valid(state, results, Quantity.RELIEF, kind.strings().get(index));
    Event.Read relief =
        own == null ? valid(state, results, Quantity.RELIEF, kind.string(Which.LOWEST)) : own;
    return relief == null || relief.bracket() == null
        ? null
        : EvenBow.window(quantity.share(kind), relief.bracket(), gauge);
  }

  /** Whether a value is in a window whose ends count as inside. */
  static boolean inside(double value, Window window) {
    return value >= window.lowMm() - SLACK && value <= window.highMm() + SLACK;
  }

  /** The last reading on a string, if nothing has spoiled it; else null. */
  private static Event.@Nullable Read valid(
      State state, Results results, Quantity quantity, String string) {
    Reading last = lastReading(state, quantity, string);
    if (last == null) {
      return null;
    }
    boolean spoiled =
        state.history().changesSince(last.changesBefore(), string).stream()
            .anyMatch(one -> results.spoils(one.change(), quantity));
    return spoiled ? null : last.read();
  }

  /** Whether the last reading on a string is neither spoiled nor too old to be used. */
  static boolean holds(State state, Results results, Quantity quantity, String string, Instant at) {
    Event.Read read = valid(state, results, quantity, string);
    return read != null && !read.missing() && !state.history().old(read.at(), at);
  }

  /**
   * Whether the last reading on a string still holds after a change that concerned other strings
   * alone.
   */
  static boolean kept(State state, Results results, Quantity quantity, String string) {
    Reading last = lastReading(state, quantity, string);
    return last != null
        && valid(state, results, quantity, string) != null
        && state.history().changesSince(last.changesBefore()).stream()
            .anyMatch(one -> !one.concerns(string) && results.spoils(one.change(), quantity));
  }

  /**
   * How the last reading on a string stands to its window; not measured where it is missing or
   * stale.
   */
  static Verdict verdict(
      State state, Results results, Kind kind, Style style, Quantity quantity, int index) {
    Event.Read read = valid(state, results, quantity, kind.strings().get(index));
    Window window =
        read == null
            ? null
            : window(state, results, kind, style, quantity, index, read.gaugeStep());
    if (read == null || window == null) {
      return Verdict.NOT_MEASURED;
    }
    Bracket bracket = read.bracket();
    if (bracket != null) {
      return Verdict.of(quantity, bracket, window);
    }
    double value = read.value() == null ? Double.NaN : read.value();
    return inside(value, window)
        ? Verdict.IN
        : value < window.lowMm() ? Verdict.BELOW : Verdict.ABOVE;
  }
}
