package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** How the player plays, which sets the window. Every kind has windows for the first three. */
public enum Style implements Worded {
  LIGHT,
  MEDIUM,
  HARD,
  /** With a slide on the strings, which are not pressed down to the frets. */
  SLIDE
}
