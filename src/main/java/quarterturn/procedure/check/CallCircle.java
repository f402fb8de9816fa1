package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** No procedure waits for itself. */
final class CallCircle implements Rule {
  @Override
  public String id() {
    return Slip.CALL_CIRCLE.rule();
  }

  @Override
  public String means() {
    return "No procedure calls itself, nor one that leads back to it.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - call: again
          procedure: example
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
        - tell: again
          text: Do the same on the next string.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
