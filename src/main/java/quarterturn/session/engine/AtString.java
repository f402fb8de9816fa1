package quarterturn.session.engine;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Decimals;

/**
 * A string that something is read or set on.
 *
 * @param string 0 is the lowest
 * @param what what is set on it, or null where it is only read
 */
record AtString(
    State state, Kind kind, Style style, Quantity quantity, @Nullable Adjustment what, int string) {
  /** The last reading on it. */
  String value() {
    Event.Read read = Values.last(state, quantity, kind.strings().get(string));
    if (read == null) {
      return "not read";
    }
    if (read.bracket() != null) {
      return read.bracket().toString();
    }
    return read.value() == null ? "not read" : amount(read.value());
  }

  /** The window of that reading. */
  String target() {
    Kind.Target target = kind.target(quantity, style, string);
    return Decimals.plain(target.window().lowMm()) + " to " + amount(target.window().highMm());
  }

  String order(Figures figures) {
    return what == null ? "" : figures.order(what, string);
  }

  private String amount(double value) {
    return Decimals.plain(value) + " " + quantity.unit();
  }
}
