package quarterturn.procedure;

/** What can be set string by string, and by which reading. */
public enum Adjustment {
  SADDLE_HEIGHT("saddle-height", Quantity.ACTION),
  SADDLE_PLACE("saddle-place", Quantity.INTONATION),
  PICKUP_HEIGHT("pickup-height", Quantity.PICKUP_GAP);

  private final String word;
  private final Quantity quantity;

  Adjustment(String word, Quantity quantity) {
    this.word = word;
    this.quantity = quantity;
  }

  /** Its word in a file, and the change it makes. */
  public String word() {
    return word;
  }

  /** The reading it follows. */
  public Quantity quantity() {
    return quantity;
  }
}
