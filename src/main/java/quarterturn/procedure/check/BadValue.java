package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Values are of the kind that their keys take. */
final class BadValue implements Rule {
  @Override
  public String id() {
    return Slip.BAD_VALUE.rule();
  }

  @Override
  public String means() {
    return "A value is of the kind, the size and the unit that its key takes; every amount"
        + " has its unit.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - wait: rest
          text: Let the neck rest.
          for: 10
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - wait: rest
          text: Let the neck rest.
          for: 10 min
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
