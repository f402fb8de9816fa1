package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Whatever is named is there. */
final class UnknownId {
  static final Rule RULE =
      Rule.read(
          Slip.UNKNOWN_ID,
          "Every step, option, procedure, change and result that is named exists.",
          Example.toEnd(
                  """
                  - tell: look
                    text: Look along the neck.
                    go: end
                  """)
              .broken("go: end", "go: finish"));

  private UnknownId() {}
}
