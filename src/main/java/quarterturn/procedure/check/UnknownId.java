package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Whatever is named is there. */
final class UnknownId implements Rule {
  @Override
  public String id() {
    return Slip.UNKNOWN_ID.rule();
  }

  @Override
  public String means() {
    return "Every step, option, procedure, change and result that is named exists.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Look along the neck.
          go: finish
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
