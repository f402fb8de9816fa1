package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Every id can be told from every other. */
final class BadId implements Rule {
  @Override
  public String id() {
    return Slip.BAD_ID.rule();
  }

  @Override
  public String means() {
    return "An id is made of a to z, 0 to 9 and -, and no two things of one kind share theirs.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - done: end
          text: That is all.
          outcome: all well
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - done: end
          text: That is all.
          outcome: all-well
        """);
  }
}
