package quarterturn.lesson;

/**
 * Where a bench is.
 *
 * @param asked which prompt of the bench's session this is, counted; tells a second visit to a step
 *     from the first
 */
public record Spot(String procedure, String step, String part, int asked) {
  /** The step as PROCEDURE/STEP, without the visit. */
  public String key() {
    return procedure + "/" + step;
  }
}
