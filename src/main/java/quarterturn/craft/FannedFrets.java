package quarterturn.craft;

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
}
