package quarterturn.craft;

import quarterturn.unit.Cents;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * How far the saddle must move so that a fretted note agrees with the open string.
 *
 * <p>Measured: fret n sounds c cents sharp of its place in the scale over the open string (at fret
 * 12 that is fretted note less harmonic). With {@code R = 2^(n/12)} and the string L long, its fret
 * at x, the ratio sounded is {@code s L / (L - x)} where s stands for all that sharpens it: {@code
 * s = R 2^(c/1200) (L - x) / L}. Moving the saddle by d and retuning must give R: {@code s (L + d)
 * = R (L + d - x)}, so {@code d = (s L - R (L - x)) / (R - s)}. With the saddle at its ideal place
 * and n = 12 that is {@code d = L (1 - q) / (2 q - 1)}, {@code q = 2^(-c/1200)}.
 *
 * <p>Plus is away from the nut, for a sharp note. Assumes that s stays as it is while the saddle
 * moves, good for a few millimetres; so move, retune, and read again. Moving by half of this, as a
 * formula in use would have it, forgets that the open string is retuned and its harmonic moves too.
 */
public final class Intonation {
  private Intonation() {}

  /** Travel with the saddle at the scale's ideal place, as for a first estimate. */
  public static Length travel(Scale scale, int fret, Cents sharp) {
    return travel(scale.length(), Length.mm(scale.fretMm(fret)), fret, sharp);
  }

  /**
   * Travel of a saddle.
   *
   * @param string from nut to saddle as it stands
   * @param place of the fret from the nut
   * @param fret which fret that is, 1 or more
   * @throws NotUnderstoodException where no travel would do
   */
  public static Length travel(Length string, Length place, int fret, Cents sharp) {
    double wanted = ratio(fret);
    double rest = string.mm() - place.mm();
    if (!(place.mm() > 0 && rest > 0)) {
      throw new NotUnderstoodException("the fret must stand between the nut and the saddle");
    }
    double s = wanted * sharp.ratio() * rest / string.mm();
    if (!(s < wanted)) {
      throw new NotUnderstoodException(
          "no saddle travel mends " + sharp + " at fret " + fret + "; read the note again");
    }
    return Length.mm((s * string.mm() - wanted * rest) / (wanted - s));
  }

  /** Travel for a small error, in millimetres for each cent: {@code L ln 2 / (1200 (R - 1))}. */
  public static double mmPerCent(Scale scale, int fret) {
    return scale.mm() * Math.log(2) / 1200 / (ratio(fret) - 1);
  }

  private static double ratio(int fret) {
    if (fret < 1 || fret > Scale.MOST_FRETS) {
      throw new NotUnderstoodException(
          "a fretted note needs a fret between 1 and " + Scale.MOST_FRETS + ", not " + fret);
    }
    return Math.pow(2, fret / 12.0);
  }
}
