package quarterturn.procedure.kind;

import quarterturn.unit.Worded;

/** The hand that plucks. */
public enum Handed implements Worded {
  RIGHT,
  LEFT
}
