package quarterturn.reckon;

import java.util.function.Supplier;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** Checks of values given on the command line. */
final class Checked {
  private Checked() {}

  /** Builds a value; an error names the options that the value came from. */
  static <T> T by(String options, Supplier<T> value) {
    try {
      return value.get();
    } catch (NotUnderstoodException e) {
      throw new NotUnderstoodException(options + ": " + e.getMessage());
    }
  }

  /** A length that must be above zero. */
  static Length above0(String option, Length length) {
    if (!(length.mm() > 0)) {
      throw new NotUnderstoodException(option + ": must be above zero, not " + length);
    }
    return length;
  }

  /** A length that must be zero or more. */
  static Length from0(String option, Length length) {
    if (length.mm() < 0) {
      throw new NotUnderstoodException(option + ": can't be negative, not " + length);
    }
    return length;
  }

  /** A whole number within bounds. */
  static int within(String option, int value, int low, int high) {
    if (value < low || value > high) {
      throw new NotUnderstoodException(
          option + ": must lie between " + low + " and " + high + ", not " + value);
    }
    return value;
  }
}
