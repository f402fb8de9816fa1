package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The kinds of bridge, by what can be moved at them. */
public enum BridgeKind implements Worded {
  /** A saddle for each string, raised and moved by its own screws. */
  ADJUSTABLE,
  /** A bridge that two posts raise as a whole; each saddle moves along its string. */
  TWO_POSTS,
  /** Saddles that carry two strings each. */
  PAIRED,
  /** Saddles that are held by locks, which are opened before a saddle is moved. */
  LOCKED,
  /** A saddle that stands as it was made; only a repairer works on it. */
  FIXED,
  /** A bridge held between the strings and springs: each string's pull moves the others. */
  FLOATING
}
