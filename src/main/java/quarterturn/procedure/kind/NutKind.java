package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** What holds the strings at the headstock end. */
public enum NutKind implements Worded {
  /** A slot for each string, cut to its height. */
  SLOTTED,
  /** Clamps; its height is that of the whole, by shims. */
  LOCKING,
  /** The strings rest on a fret; the nut only spaces them. */
  ZERO_FRET
}
