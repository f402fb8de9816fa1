package quarterturn.report.sheet;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.EventWords;
import quarterturn.report.Frets;
import quarterturn.session.Event;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;

/** Words for readings, windows and conventions on a sheet. */
final class ReadingWords {
  private ReadingWords() {}

  /** A quantity's name with a capital: "Nut clearance". */
  static String name(Quantity quantity) {
    String word = quantity.said();
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  /** A reading without its unit: "0.60 to 0.65", "touches (no gap)", "2.25", "not measured". */
  static String value(Event.Read read) {
    String words = EventWords.value(read).replace(" " + read.quantity().unit(), "");
    boolean sharp =
        read.quantity() == Quantity.INTONATION && read.value() != null && read.value() > 0;
    return sharp ? "+" + words : words;
  }

  /** A value as left, which a reading taken before the last change does not tell. */
  static String left(Sheet.Taken last) {
    return last.spoiled() == null ? value(last.read()) : "not read since";
  }

  /** A window in its quantity's unit: "0.30 to 0.45 mm", "-2 to 2 cents". */
  static String window(Quantity quantity, Window window) {
    return range(quantity, window) + " " + quantity.unit();
  }

  /** A window without its unit. */
  static String range(Quantity quantity, Window window) {
    int decimals = quantity == Quantity.INTONATION ? 0 : 2;
    boolean whole =
        window.lowMm() == Math.rint(window.lowMm())
            && window.highMm() == Math.rint(window.highMm());
    int digits = decimals == 0 && !whole ? 1 : decimals;
    return Decimals.print(window.lowMm(), digits)
        + " to "
        + Decimals.print(window.highMm(), digits);
  }

  /** A reading's convention: "held at frets 1 and 17, read over fret 8". */
  static String convention(Event.Read read) {
    return (read.held().isEmpty() ? "open string" : Frets.held(read.held()))
        + Frets.readOver(read.readAt())
        + switch (read.quantity()) {
          case INTONATION -> ", against the open string's octave";
          case PICKUP_GAP -> ", string to pole";
          default -> "";
        };
  }

  /**
   * How a reading stands to its window: "in", "above", "below", "touches", "undecided", or "-" for
   * none.
   */
  static String stands(Sheet.Taken taken) {
    Verdict verdict = taken.verdict();
    return verdict == null || verdict == Verdict.NOT_MEASURED
        ? "-"
        : verdict.name().toLowerCase(Locale.ROOT);
  }

  /** Whether a reading is outside its window. */
  static boolean out(Sheet.@Nullable Taken taken) {
    Verdict verdict = taken == null ? null : taken.verdict();
    return verdict == Verdict.ABOVE || verdict == Verdict.BELOW || verdict == Verdict.TOUCHES;
  }

  /** How a reading stands to a window whose ends count as inside. */
  static Verdict verdict(Event.Read read, Window window) {
    if (read.bracket() != null) {
      return Verdict.of(read.quantity(), read.bracket(), window);
    }
    if (read.value() == null) {
      return Verdict.NOT_MEASURED;
    }
    double slack = 1e-6;
    if (read.value() < window.lowMm() - slack) {
      return Verdict.BELOW;
    }
    return read.value() > window.highMm() + slack ? Verdict.ABOVE : Verdict.IN;
  }

  /** A reading with its unit, for a sentence: "0.60 to 0.65 mm", "+5 cents". */
  static String withUnit(Event.Read read) {
    if (read.quantity() == Quantity.INTONATION && read.value() != null) {
      return new Cents(read.value()).toString();
    }
    return EventWords.value(read);
  }
}
