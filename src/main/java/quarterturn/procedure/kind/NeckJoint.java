package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** How a neck is joined to the body. */
public enum NeckJoint implements Worded {
  /** The neck is screwed on, so that it can come off, and be tilted by a shim. */
  BOLT_ON,
  /** The neck is glued in. */
  SET,
  UNKNOWN
}
