package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The kinds of nut, which holds the strings at the headstock end. */
public enum NutKind implements Worded {
  /** A slot for each string, cut to its height. */
  SLOTTED,
  /** The nut clamps the strings; shims set the height of the whole. */
  LOCKING,
  /** The strings rest on a fret; the nut only spaces them. */
  ZERO_FRET
}
