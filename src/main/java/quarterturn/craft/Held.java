package quarterturn.craft;

import quarterturn.unit.NotUnderstoodException;

/**
 * How a relief reading is taken: the string held down at two frets, the gap read over a third
 * between them. The same bow gives another number under another convention, so a reading without
 * one is worthless.
 *
 * @param low the fret held toward the nut, usually 1
 * @param high the fret held toward the body, usually the one nearest the joint
 * @param readAt strictly between the two
 */
public record Held(int low, int high, int readAt) {
  public Held {
    Scale.known(low);
    Scale.known(high);
    if (!(low < readAt && readAt < high)) {
      throw new NotUnderstoodException(
          "the fret read must lie between the frets held, not "
              + low
              + ", "
              + readAt
              + " and "
              + high);
    }
  }

  /** A string held at fret 1 and fret {@code high}, with the gap read over {@code readAt}. */
  public static Held at(int high, int readAt) {
    return new Held(1, high, readAt);
  }
}
