package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Whatever is to be filled in can be. */
final class BadBlank implements Rule {
  @Override
  public String id() {
    return Slip.BAD_BLANK.rule();
  }

  @Override
  public String means() {
    return "A blank in braces is one that the program can fill in, in a text where it does so.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Lay the {instrument} on a soft cloth.
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
          text: Lay the {kind} on a soft cloth.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
