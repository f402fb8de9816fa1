package quarterturn.procedure;

import quarterturn.unit.Worded;

/** The pictures a step can ask for. */
public enum Picture implements Worded {
  /** The neck with the frets that are held and the one where the gap is read. */
  HOLD,
  /** The neck's curve with its window and its reading. */
  CURVE,
  /** The turn dial, seen from the rod nut's end. */
  DIAL,
  /** The places where a rod nut can be. */
  PLACES,
  /** A key in its socket: seated, and not. */
  KEY,
  /** The places where the player's stroke meets the frets. */
  CONTACT
}
