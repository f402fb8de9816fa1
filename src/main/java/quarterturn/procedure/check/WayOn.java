package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** From every step there is a way on. */
final class WayOn implements Rule {
  @Override
  public String id() {
    return Slip.WAY_ON.rule();
  }

  @Override
  public String means() {
    return "Every step but the last says the way on, in one way: by go, or by branches.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Look along the neck.
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
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
