package quarterturn.craft;

import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * How a string's stiffness spreads its partials: {@code f_n = n f0 sqrt(1 + B n^2)} with {@code B =
 * pi^3 E d^4 / (64 T L^2)} for pinned ends (textbook; JASA 24 (1952) 267).
 *
 * <p>d is the core's diameter: a wrap adds mass and hardly any stiffness, so this is a lower bound
 * for a wound string. L is the speaking length; stopping at fret 12 makes B four times as large.
 *
 * @param b the inharmonicity B, zero or more
 */
public record Stiffness(double b) {
  public Stiffness {
    if (!(b >= 0) || Double.isInfinite(b)) {
      throw new IllegalArgumentException("an inharmonicity must be finite and not negative");
    }
  }

  /**
   * The stiffness of a string.
   *
   * @param speaking length that sounds
   * @param core the steel core, or the whole of a plain string
   */
  public static Stiffness of(Length speaking, Force tension, Length core) {
    if (!(tension.newtons() > 0) || !(speaking.mm() > 0)) {
      throw new NotUnderstoodException("a string's tension and its length must be above zero");
    }
    double metres = core.mm() / 1000;
    double length = speaking.mm() / 1000;
    return new Stiffness(
        Math.pow(Math.PI, 3)
            * StringGauge.STEEL_PASCAL
            * Math.pow(metres, 4)
            / (64 * tension.newtons() * length * length));
  }

  /** How far partial {@code n} sounds above {@code n} times the first, in cents. */
  public Cents sharpness(int n) {
    return Cents.ofRatio(stretch(n) / stretch(1));
  }

  private double stretch(int n) {
    return Math.sqrt(1 + b * n * n);
  }
}
