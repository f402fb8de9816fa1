package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Words out of a fixed list are in it. */
final class UnknownWord implements Rule {
  @Override
  public String id() {
    return Slip.UNKNOWN_WORD.rule();
  }

  @Override
  public String means() {
    return "Kinds of step, facts, hazards, pictures, quantities and the like are words that"
        + " the program knows.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [in-tune]
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
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
