package quarterturn.procedure;

/** Which string a reading is taken on. */
public enum Which {
  LOWEST("lowest"),
  HIGHEST("highest"),
  /** Every string in turn, the lowest first. */
  EACH("each");

  private final String word;

  Which(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
