package quarterturn.session.engine;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Results;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Decimals;

/**
 * A string that a step reads or sets.
 *
 * @param gauge the step of the gauge, in the quantity's unit
 * @param string index of the string, 0 for the lowest
 * @param what the part that the step sets, or null where it only reads
 */
record AtString(
    State state,
    Results results,
    Kind kind,
    Style style,
    Quantity quantity,
    double gauge,
    @Nullable Adjustment what,
    int string) {
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
    Window window = Values.window(state, results, kind, style, quantity, string, gauge);
    if (window == null) {
      return "what an even bow gives";
    }
    return quantity.ofPart()
        ? window.toString()
        : Decimals.plain(window.lowMm()) + " to " + amount(window.highMm());
  }

  String order(Figures figures) {
    return what == null ? "" : figures.order(what, string);
  }

  private String amount(double value) {
    return Decimals.plain(value) + " " + quantity.unit();
  }
}
