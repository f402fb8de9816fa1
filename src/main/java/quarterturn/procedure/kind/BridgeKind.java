package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The kinds of bridge, by what can be moved at them. */
public enum BridgeKind implements Worded {
  /** Saddles that can be raised and moved. */
  ADJUSTABLE,
  /** A saddle that stands as it was made. */
  FIXED,
  /** A bridge held between the strings and springs: each string's pull moves the others. */
  FLOATING
}
