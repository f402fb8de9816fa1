package quarterturn.procedure;

/** What rod a neck has. */
public enum RodKind {
  /** It can bend the neck back only. */
  SINGLE("single"),
  /** It can bend the neck either way, with a slack zone between. */
  TWO_WAY("two-way"),
  /** Two rods, to be turned in step. */
  TWO("two-rods"),
  /** None that can be adjusted. */
  NONE("none-fitted");

  private final String word;

  RodKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
