package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Values are of the kind that their keys take. */
final class BadValue {
  static final Rule RULE =
      Rule.read(
          Slip.BAD_VALUE,
          "A value is of the kind, the size and the unit that its key takes; every amount"
              + " has its unit.",
          Example.toEnd(
                  """
                  - wait: rest
                    text: Let the neck rest.
                    for: 10 min
                    go: end
                  """)
              .broken("10 min", "10"));

  private BadValue() {}
}
