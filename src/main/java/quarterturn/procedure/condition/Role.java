package quarterturn.procedure.condition;

import quarterturn.unit.Worded;

/** Who is at the bench. */
public enum Role implements Worded {
  BEGINNER,
  TECHNICIAN
}
