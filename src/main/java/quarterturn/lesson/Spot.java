package quarterturn.lesson;

/**
 * Where a bench is.
 *
 * @param asked number of the prompt in the bench's session, which tells a second visit to a step
 *     from the first
 */
public record Spot(String procedure, String step, String part, int asked) {
  /** The step as PROCEDURE/STEP, without the visit. */
  public String key() {
    return procedure + "/" + step;
  }
}
