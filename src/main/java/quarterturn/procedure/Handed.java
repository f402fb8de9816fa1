package quarterturn.procedure;

import quarterturn.unit.Worded;

/** Which hand plucks. */
public enum Handed implements Worded {
  RIGHT,
  LEFT
}
