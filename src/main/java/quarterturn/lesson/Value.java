package quarterturn.lesson;

import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** What was read, turned or is read back. */
public sealed interface Value {
  /** How close two bounds of the same leaves lie, in millimetres. */
  double SAME_MM = 0.0005;

  /** A gauge reading. */
  record Gap(Bracket bracket) implements Value {
    @Override
    public String toString() {
      return bracket.toString();
    }
  }

  /** One number in its unit. */
  record Number(double value, String unit) implements Value {
    public Number {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a reading must be a finite number, not " + value);
      }
    }

    @Override
    public String toString() {
      return Decimals.plain(value) + " " + unit;
    }
  }

  /** A rod turn; plus tightens. */
  record Rod(Turn turn) implements Value {
    @Override
    public String toString() {
      String way = turn.turns() > 0 ? "tighten " : turn.turns() < 0 ? "loosen " : "";
      return way + turn;
    }
  }

  /** No value: it could not be measured, or nothing is to be read back. */
  record None() implements Value {
    @Override
    public String toString() {
      return "nothing";
    }
  }

  Value NONE = new None();

  /** Whether this value, read back, agrees with the one that was said. */
  default boolean agrees(Value said) {
    if (this instanceof Gap a && said instanceof Gap b) {
      return near(a.bracket().lowMm(), b.bracket().lowMm())
          && near(a.bracket().highMm(), b.bracket().highMm());
    }
    if (this instanceof Number a && said instanceof Number b) {
      return a.unit().equals(b.unit()) && near(a.value(), b.value());
    }
    if (this instanceof Rod a && said instanceof Rod b) {
      return a.turn().atLeast(b.turn()) && b.turn().atLeast(a.turn());
    }
    return this instanceof None && said instanceof None;
  }

  private static boolean near(double a, double b) {
    return a == b || Math.abs(a - b) < SAME_MM;
  }
}
