package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** How hard the player plays, which sets the window. */
public enum Style implements Worded {
  LIGHT,
  MEDIUM,
  HARD
}
