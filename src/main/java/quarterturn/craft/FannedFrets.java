package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A board whose frets fan out: every string has a scale of its own, stepped evenly from the bass to
 * the treble side, and one fret stands square to the strings.
 *
 * <p>Strings are treated as parallel. {@code x_n,i = L_i (1 - 2^(-n/12))}, all strings aligned at
 * the square fret. A fret is then straight across the strings, because every {@code x_n,i} is
 * linear in {@code L_i} and {@code L_i} is linear in the string's place.
 *
 * @param bass scale of the first string, on the bass side
 * @param treble scale of the last string
 * @param strings two or more
 * @param squareFret the fret at right angles to the strings; 0 is the nut
 */
public record FannedFrets(Length bass, Length treble, int strings, int squareFret) {
  public FannedFrets {
    if (strings < 2) {
      throw new NotUnderstoodException("fanned frets need two strings or more");
    }
    if (!(bass.mm() > 0) || !(treble.mm() > 0)) {
      throw new NotUnderstoodException("a scale length must be above zero");
    }
    Scale.known(squareFret);
  }

  /** The scale of a string, where string 1 is on the bass side. */
  public Scale scale(int string) {
    if (string < 1 || string > strings) {
      throw new NotUnderstoodException(
          "a string must lie between 1 and " + strings + ", not " + string);
    }
    double step = (treble.mm() - bass.mm()) / (strings - 1);
    return new Scale(Length.mm(bass.mm() + step * (string - 1)));
  }

  /** Place of a fret along a string from the square fret, in millimetres; minus toward the nut. */
  public double fromSquareFretMm(int string, int fret) {
    Scale scale = scale(string);
    return scale.fretMm(fret) - scale.fretMm(squareFret);
  }

  /** Place of the saddle along a string from the square fret, in millimetres. */
  public double saddleFromSquareFretMm(int string) {
    return scale(string).speakingMm(squareFret);
  }

  /**
   * How far a fret leans from square, in degrees; plus where it lies nearer the saddle on the
   * treble side.
   *
   * @param spacing from string to string, above zero
   */
  public double slantDegrees(int fret, Length spacing) {
    if (!(spacing.mm() > 0)) {
      throw new NotUnderstoodException("the spacing of the strings must be above zero");
    }
    double along = fromSquareFretMm(strings, fret) - fromSquareFretMm(1, fret);
    return Math.toDegrees(Math.atan2(along, spacing.mm() * (strings - 1)));
  }
}
