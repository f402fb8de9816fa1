package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The kinds of magnetic pickup, by their pull on the string and by their place. */
public enum PickupKind implements Worded {
  /** A covered bar or twin coil by the neck, or the only pickup. */
  COVERED_NECK,
  COVERED_BRIDGE,
  /** Bare rod magnets by the neck, or the only pickup. */
  BARE_NECK,
  BARE_BRIDGE
}
