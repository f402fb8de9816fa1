package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing is said that nobody reads. */
final class UnknownKey implements Rule {
  @Override
  public String id() {
    return Slip.UNKNOWN_KEY.rule();
  }

  @Override
  public String means() {
    return "Every key is one that may stand in its place.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Look along the neck.
          reason: A twist shows best from its end.
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
        - tell: look
          text: Look along the neck.
          why: A twist shows best from its end.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
