package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A scale length and the places of its frets.
 *
 * <p>Twelve-tone equal temperament: each fret shortens the string by {@code 2^(-1/12)}, so that
 * fret n stands at {@code x_n = L (1 - 2^(-n/12))} from the nut. Fret 0 is the nut's edge. A
 * textbook identity; it leaves out what stretch and stiffness add, which the saddle makes good.
 *
 * @param length twice the distance from the nut to fret 12, above zero
 */
public record Scale(Length length) {
  /** The highest fret that is asked about; three octaves above the open string. */
  public static final int MOST_FRETS = 36;

  public Scale {
    if (!(length.mm() > 0)) {
      throw new NotUnderstoodException("a scale length must be above zero");
    }
  }

  public double mm() {
    return length.mm();
  }

  /** Distance of fret {@code n} from the nut, in millimetres. */
  public double fretMm(int n) {
    return mm() * share(n);
  }

  /** Distance from fret {@code n} to the saddle's ideal place, in millimetres. */
  public double speakingMm(int n) {
    return mm() * Math.pow(2, -known(n) / 12.0);
  }

  /**
   * How much of a saddle's rise arrives over fret {@code n}: {@code x_n / L}, a half at fret 12. By
   * similar triangles, the open string being straight.
   */
  public static double share(int n) {
    // The minus stands below, so that the nut lies at 0 and not at -0.
    return -Math.expm1(known(n) / -12.0 * Math.log(2));
  }

  /** {@code n} itself, checked to lie between 0 and {@link #MOST_FRETS}. */
  static int known(int n) {
    if (n < 0 || n > MOST_FRETS) {
      throw new NotUnderstoodException(
          "a fret must lie between 0 and " + MOST_FRETS + ", not " + n);
    }
    return n;
  }

  /**
   * Distances of frets 1 to {@code frets} from the nut, in millimetres; the first entry is fret 1.
   */
  public double[] fretsMm(int frets) {
    double[] places = new double[known(frets)];
    for (int n = 1; n <= frets; n++) {
      places[n - 1] = fretMm(n);
    }
    return places;
  }
}
