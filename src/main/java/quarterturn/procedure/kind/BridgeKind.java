package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** What can be moved at a bridge. */
public enum BridgeKind implements Worded {
  /** Saddles that can be raised and moved. */
  ADJUSTABLE,
  /** A saddle that stands as it was made. */
  FIXED,
  /** A bridge held between the strings and springs: each string's pull moves the others. */
  FLOATING
}
