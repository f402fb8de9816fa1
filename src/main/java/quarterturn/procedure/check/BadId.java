package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Every id can be told from every other. */
final class BadId {
  static final Rule RULE =
      Rule.read(
          Slip.BAD_ID,
          "An id is made of a to z, 0 to 9 and -, and no two things of one kind share theirs.",
          Example.steps(
                  """
                  - done: end
                    text: That is all.
                    outcome: all-well
                  """)
              .broken("all-well", "all well"));

  private BadId() {}
}
