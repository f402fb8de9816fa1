package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing in a file is unseen. */
final class ControlCharacter {
  static final Rule RULE =
      Rule.read(
          Slip.CONTROL_CHARACTER,
          "Every character of a file can be shown; none is lost, and none drives a terminal.",
          Example.toEnd(
                  """
                  - tell: look
                    text: "Look along the neck."
                    go: end
                  """)
              .broken("along", "along\\x07"));

  private ControlCharacter() {}
}
