package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** From every step there is a way on. */
final class WayOn {
  static final Rule RULE =
      Rule.read(
          Slip.WAY_ON,
          "Every step but the last says the way on, in one way: by go, or by branches.",
          Example.toEnd(
                  """
                  - tell: look
                    text: Look along the neck.
                    go: end
                  """)
              .broken("  go: end\n", ""));

  private WayOn() {}
}
