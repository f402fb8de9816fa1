package quarterturn.procedure.check;

/**
 * A changed sheet or block.
 *
 * @param file its name without the ending, below the folder of procedures
 * @param what what stood and stands there
 * @param text all of it, as it is written now
 */
record Mutant(String file, Operator operator, String what, String text) {
  /** A kind of change. */
  enum Operator {
    DROP_BRANCH,
    MOVE_BOUND,
    DELETE_CAUTION,
    RETARGET,
    REMOVE_RETUNE,
    STRING,
    UNIT,
    STOP_FEEL,
    WAIT,
    HAZARD,
    TEXT
  }
}
