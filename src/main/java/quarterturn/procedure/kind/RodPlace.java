package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** Where the nut of a truss rod can be. */
public enum RodPlace implements Worded {
  /** At the headstock, in plain sight. */
  HEADSTOCK,
  /** At the headstock, under a plate. */
  UNDER_PLATE,
  /** At the body end of the neck, within reach. */
  BODY_END,
  /** At the body end of the neck, under a plate. */
  BODY_PLATE,
  /** Inside the body, at the end of the fingerboard. */
  SOUND_HOLE,
  /** In the pocket of the neck, which has to come off for it. */
  POCKET,
  /** There is none. */
  NONE
}
