package quarterturn.procedure;

/** Which hand plucks. */
public enum Handed {
  RIGHT("right"),
  LEFT("left");

  private final String word;

  Handed(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
