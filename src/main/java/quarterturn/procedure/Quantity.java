package quarterturn.procedure;

/** What can be measured, in which unit. */
public enum Quantity {
  /** Gap under a string held at two frets, by thickness gauges. */
  RELIEF("relief", "mm", true),
  /** Relative humidity of the room. */
  HUMIDITY("humidity", "%", false);

  private final String word;
  private final String unit;
  private final boolean bracket;

  Quantity(String word, String unit, boolean bracket) {
    this.word = word;
    this.unit = unit;
    this.bracket = bracket;
  }

  public String word() {
    return word;
  }

  public String unit() {
    return unit;
  }

  /** Whether it is read as a bracket on a string (and can touch), not as one number. */
  public boolean bracket() {
    return bracket;
  }
}
