package quarterturn.lesson;

import quarterturn.unit.Worded;

/** Which way something is expected to go: less, the same or more. */
public enum Direction implements Worded {
  LESS("smaller", "loosen"),
  SAME("the same", "no turn"),
  MORE("larger", "tighten");

  private final String ofReading;
  private final String ofTurn;

  Direction(String ofReading, String ofTurn) {
    this.ofReading = ofReading;
    this.ofTurn = ofTurn;
  }

  /** The direction in words for people: of a turn where {@code turn}, else of a reading. */
  public String words(boolean turn) {
    return turn ? ofTurn : ofReading;
  }
}
