package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing in a file is unseen. */
final class ControlCharacter implements Rule {
  @Override
  public String id() {
    return Slip.CONTROL_CHARACTER.rule();
  }

  @Override
  public String means() {
    return "Every character of a file can be shown; none is lost, and none drives a terminal.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: "Look along\\x07 the neck."
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
          text: "Look along the neck."
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
