package quarterturn.session.engine;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Results;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Changed;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/** The last reading of each string, and how it stands to its window. */
final class Values {
  private static final double SLACK = 1e-6;

  private Values() {}

  /** The last counting reading of a quantity on a string since what spoils it, or null. */
  static Event.@Nullable Read last(State state, Quantity quantity, @Nullable String string) {
    for (int i = state.history().readings().size() - 1; i >= 0; i--) {
      Event.Read read = state.history().readings().get(i).read();
      if (read.quantity() == quantity
          && (string == null || string.equals(read.string()))
          && !read.missing()) {
        return read;
      }
    }
    return null;
  }

  /** The first reading of a quantity on a string in this session, or null. */
  static Event.@Nullable Read first(State state, Quantity quantity, @Nullable String string) {
    for (Reading reading : state.history().readings()) {
      Event.Read read = reading.read();
      if (read.quantity() == quantity
          && (string == null || string.equals(read.string()))
          && !read.missing()) {
        return read;
      }
    }
    return null;
  }

  /** Both ends included. */
  static boolean inside(double value, Window window) {
    return value >= window.lowMm() - SLACK && value <= window.highMm() + SLACK;
  }

  /** The last reading on a string that nothing has spoiled since, or null. */
  private static Event.@Nullable Read valid(
      State state, Results results, Quantity quantity, String string) {
    for (int i = state.history().readings().size() - 1; i >= 0; i--) {
      Reading reading = state.history().readings().get(i);
      Event.Read read = reading.read();
      if (read.quantity() == quantity && string.equals(read.string()) && !read.missing()) {
        List<Changed> since =
            state
                .history()
                .changes()
                .subList(reading.changesBefore(), state.history().changes().size());
        boolean spoiled = since.stream().anyMatch(one -> results.spoils(one.change(), quantity));
        return spoiled ? null : read;
      }
    }
    return null;
  }

  /** How the last reading of a string stands to its window; none where it is stale. */
  static Verdict verdict(
      State state, Results results, Kind kind, Style style, Quantity quantity, int index) {
    Event.Read read = valid(state, results, quantity, kind.strings().get(index));
    if (read == null || kind.windows().get(quantity) == null) {
      return Verdict.NOT_MEASURED;
    }
    Window window = kind.target(quantity, style, index).window();
    Bracket bracket = read.bracket();
    if (bracket != null) {
      return Verdict.of(bracket, window);
    }
    double value = read.value() == null ? Double.NaN : read.value();
    return inside(value, window)
        ? Verdict.IN
        : value < window.lowMm() ? Verdict.BELOW : Verdict.ABOVE;
  }
}
