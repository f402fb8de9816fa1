package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing is said that nobody reads. */
final class UnknownKey {
  static final Rule RULE =
      Rule.read(
          Slip.UNKNOWN_KEY,
          "Every key is one that may stand in its place.",
          Example.toEnd(
                  """
                  - tell: look
                    text: Look along the neck.
                    why: A twist shows best from its end.
                    go: end
                  """)
              .broken("why:", "reason:"));

  private UnknownKey() {}
}
