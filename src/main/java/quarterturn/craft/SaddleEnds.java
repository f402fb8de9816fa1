package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * What the two ends of a one-piece saddle, or of a bridge on two posts, must do for wanted changes
 * of action on the outer strings. Each outer string is taken to rest over its end, so that an end
 * moves by what {@link SaddleHeight} says; the strings between follow a straight line. Posts stand
 * a little outside the strings, so a bridge is read again after it was set.
 *
 * @param lowest the rise under the lowest string; minus where the saddle goes down
 * @param highest the rise under the highest string
 */
public record SaddleEnds(Length lowest, Length highest) {
  /**
   * The ends for changes of action, plus is up.
   *
   * @param fret at which action is read, 1 or more
   */
  public static SaddleEnds of(Length lowest, Length highest, int fret) {
    return new SaddleEnds(SaddleHeight.change(lowest, fret), SaddleHeight.change(highest, fret));
  }

  /**
   * The rise under one string, the strings standing evenly.
   *
   * @param index 0 for the lowest string
   * @param strings two or more
   */
  public Length under(int index, int strings) {
    if (strings < 2 || index < 0 || index >= strings) {
      throw new NotUnderstoodException("a saddle has two ends: name one of two strings or more");
    }
    double share = index / (strings - 1.0);
    return Length.mm(lowest.mm() + share * (highest.mm() - lowest.mm()));
  }

  /** What stands above the bridge once the ends are set; with less than nothing it is too short. */
  public SaddleEnds left(Length lowestStands, Length highestStands) {
    return new SaddleEnds(
        Length.mm(lowestStands.mm() + lowest.mm()), Length.mm(highestStands.mm() + highest.mm()));
  }
}
