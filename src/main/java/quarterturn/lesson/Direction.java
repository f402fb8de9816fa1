package quarterturn.lesson;

/** Which way something is expected to go: less, the same or more. */
public enum Direction {
  LESS("less", "smaller", "loosen"),
  SAME("same", "the same", "no turn"),
  MORE("more", "larger", "tighten");

  private final String word;
  private final String ofReading;
  private final String ofTurn;

  Direction(String word, String ofReading, String ofTurn) {
    this.word = word;
    this.ofReading = ofReading;
    this.ofTurn = ofTurn;
  }

  /** As the journal has it. */
  public String word() {
    return word;
  }

  /** For people, of what is predicted. */
  public String words(boolean turn) {
    return turn ? ofTurn : ofReading;
  }
}
