package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** No procedure waits for itself. */
final class CallCircle {
  static final Rule RULE =
      Rule.read(
          Slip.CALL_CIRCLE,
          "No procedure calls itself, nor one that leads back to it.",
          Example.toEnd(
                  """
                  - call: again
                    procedure: example
                    go: end
                  """)
              .mended(
                  "call: again\n  procedure: example",
                  "tell: again\n  text: Do the same on the next string."));

  private CallCircle() {}
}
