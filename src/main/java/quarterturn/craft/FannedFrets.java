package quarterturn.craft;

import java.util.stream.DoubleStream;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A board whose frets fan out: every string has a scale of its own, stepped evenly from the bass to
 * the treble side.
 *
 * <p>Strings are treated as parallel and aligned at the one fret that stands square to them. Every
 * fret is then straight across the strings, because its place {@code x_n,i = L_i (1 - 2^(-n/12))}
 * is linear in {@code L_i} and {@code L_i} is linear in the string's place.
 *
 * @param bass scale of the first string, on the bass side
 * @param treble scale of the last string
 * @param strings two or more
 */
public record FannedFrets(Length bass, Length treble, int strings) {
  public FannedFrets {
    if (strings < 2) {
      throw new NotUnderstoodException("fanned frets need two strings or more");
    }
    if (!(bass.mm() > 0) || !(treble.mm() > 0)) {
      throw new NotUnderstoodException("a scale length must be above zero");
    }
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

  /**
   * How far fret {@code n} lies beyond the square fret along a string, in mm; plus to the saddle.
   */
  public double offsetMm(int string, int n, int square) {
    return scale(string).fretMm(n) - scale(string).fretMm(square);
  }

  /**
   * How far the treble end of fret {@code n} lies nearer to the saddle than its bass end, measured
   * from the square fret along the strings, in millimetres. Minus where it lies nearer to the nut.
   */
  public double slantMm(int n, int square) {
    return offsetMm(strings, n, square) - offsetMm(1, n, square);
  }

  /** Slants in degrees, from their millimetres and the way from the first to the last string. */
  public static double[] slantDegrees(double[] slantsMm, Length spread) {
    return DoubleStream.of(slantsMm)
        .map(slant -> Math.toDegrees(Math.atan2(slant, spread.mm())))
        .toArray();
  }
}
