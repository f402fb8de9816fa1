package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The kinds of truss rod that a neck can have. */
public enum RodKind implements Worded {
  /** A rod that can bend the neck back only. */
  SINGLE,
  /** A rod that can bend the neck either way, with a slack zone between. */
  TWO_WAY,
  /** A pair of rods, to be turned in step. */
  TWO_RODS,
  /** No rod that can be adjusted. */
  NONE_FITTED
}
