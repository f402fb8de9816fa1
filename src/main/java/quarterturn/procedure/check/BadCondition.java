package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Conditions can be read. */
final class BadCondition {
  static final Rule RULE =
      Rule.read(
          Slip.BAD_CONDITION,
          "A condition is made of the words that the program can judge, with amounts in"
              + " their units.",
          Example.toEnd(
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
                  """)
              .broken("is beginner", "is teacher"));

  private BadCondition() {}
}
