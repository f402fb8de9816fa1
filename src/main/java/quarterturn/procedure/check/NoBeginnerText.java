package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** A beginner is told as much as a technician. */
final class NoBeginnerText {
  static final Rule RULE =
      Rule.read(
          Slip.NO_BEGINNER_TEXT,
          "A step with a technician's wording has the beginner's text as well.",
          Example.toEnd(
                  """
                  - tell: look
                    text: Look along the neck from its end.
                    brief: Sight the neck.
                    go: end
                  """)
              .broken("  text: Look along the neck from its end.\n", ""));

  private NoBeginnerText() {}
}
