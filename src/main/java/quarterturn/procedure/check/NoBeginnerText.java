package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** A beginner is told as much as a technician. */
final class NoBeginnerText implements Rule {
  @Override
  public String id() {
    return Slip.NO_BEGINNER_TEXT.rule();
  }

  @Override
  public String means() {
    return "A step with a technician's wording has the beginner's text as well.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          brief: Sight the neck.
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
          text: Look along the neck from its end.
          brief: Sight the neck.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
