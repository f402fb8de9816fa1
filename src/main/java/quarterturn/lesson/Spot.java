package quarterturn.lesson;

/**
 * Where a bench is.
 *
 * @param asked which prompt of the bench's session this is, counted; tells a second visit to a step
 *     from the first
 */
public record Spot(String procedure, String step, String part, int asked) {
  /** The step without the visit, as a spread of several benches is gathered by. */
  public String key() {
    return procedure + "/" + step;
  }
}
