package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Nothing needed is left out. */
final class MissingKey {
  static final Rule RULE =
      Rule.read(
          Slip.MISSING_KEY,
          "Every key that must stand in a place stands there.",
          Example.toEnd(
                  """
                  - wait: rest
                    text: Let the neck rest.
                    for: 10 min
                    go: end
                  """)
              .broken("  for: 10 min\n", ""));

  private MissingKey() {}
}
