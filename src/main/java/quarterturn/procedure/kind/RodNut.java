package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The forms of a truss rod nut, by what turns it. */
public enum RodNut implements Worded {
  /** A six-sided hole, for a hex key. */
  SOCKET,
  /** A six-sided nut on a thread, for a box key. */
  HEXAGON,
  /** A wheel with holes around it, for a rod. */
  WHEEL,
  /** A slot or a cross, for a driver. */
  SLOT
}
