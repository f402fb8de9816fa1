package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Whatever is to be filled in can be. */
final class BadBlank {
  static final Rule RULE =
      Rule.read(
          Slip.BAD_BLANK,
          "A blank in braces is one that the program can fill in, in a text where it does so.",
          Example.toEnd(
                  """
                  - tell: look
                    text: Lay the {kind} on a soft cloth.
                    go: end
                  """)
              .broken("{kind}", "{instrument}"));

  private BadBlank() {}
}
