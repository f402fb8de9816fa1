package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Conditions can be read. */
final class BadCondition implements Rule {
  @Override
  public String id() {
    return Slip.BAD_CONDITION.rule();
  }

  @Override
  public String means() {
    return "A condition is made of the words that the program can judge, with amounts in"
        + " their units.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Look along the neck.
          branches:
            - when: role is teacher
              go: explain
            - when: role is technician
              go: end
        - tell: explain
          text: A straight neck shows two straight edges.
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
          branches:
            - when: role is beginner
              go: explain
            - when: role is technician
              go: end
        - tell: explain
          text: A straight neck shows two straight edges.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
