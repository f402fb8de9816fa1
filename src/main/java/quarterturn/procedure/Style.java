package quarterturn.procedure;

/** How hard the player plays, which sets the window. */
public enum Style {
  LIGHT("light"),
  MEDIUM("medium"),
  HARD("hard");

  private final String word;

  Style(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
