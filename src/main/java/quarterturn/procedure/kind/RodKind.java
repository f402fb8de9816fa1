package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** What rod a neck has. */
public enum RodKind implements Worded {
  /** It can bend the neck back only. */
  SINGLE,
  /** It can bend the neck either way, with a slack zone between. */
  TWO_WAY,
  /** Two rods, to be turned in step. */
  TWO_RODS,
  /** None that can be adjusted. */
  NONE_FITTED
}
