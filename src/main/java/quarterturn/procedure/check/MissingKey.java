package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing needed is left out. */
final class MissingKey implements Rule {
  @Override
  public String id() {
    return Slip.MISSING_KEY.rule();
  }

  @Override
  public String means() {
    return "Every key that must stand in a place stands there.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - wait: rest
          text: Let the neck rest.
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
