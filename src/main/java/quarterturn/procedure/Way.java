package quarterturn.procedure;

/**
 * One way on from a step of a procedure.
 *
 * @param procedure the procedure's id
 * @param step the step's id
 * @param label what it is taken for: an option, a feel, a condition or "otherwise"; empty where the
 *     step has only one way on
 * @param to id of the step it leads to
 */
public record Way(String procedure, String step, String label, String to) {
  /** The way in one line: "relief: finished -> slotted-nut (play-test is open-only)". */
  @Override
  public String toString() {
    return procedure + ": " + step + " -> " + to + (label.isEmpty() ? "" : " (" + label + ")");
  }
}
