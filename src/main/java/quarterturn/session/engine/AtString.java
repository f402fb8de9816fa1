package quarterturn.session.engine;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Decimals;

/**
 * A string that a step reads or sets.
 *
 * @param string index of the string, 0 for the lowest
 * @param what the part that the step sets, or null where it only reads
 */
record AtString(
    State state, Kind kind, Style style, Quantity quantity, @Nullable Adjustment what, int string) {
  /** The last reading on the string, in words. */
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

  /** The window for the string's last reading, in words. */
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
