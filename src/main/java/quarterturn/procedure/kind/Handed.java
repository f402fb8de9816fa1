package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** Which hand plucks. */
public enum Handed implements Worded {
  RIGHT,
  LEFT
}
