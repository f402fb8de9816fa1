package quarterturn.procedure.condition;

/** What the neck did after the last turn, as far as two readings can tell. */
public enum Response {
  NOT_TURNED("not turned yet"),
  MOVED("moved as told"),
  NO_ANSWER("gave no answer"),
  WRONG_WAY("moved the wrong way"),
  /** The move could not be seen: the string touched before and after, or a reading is missing. */
  UNSEEN("could not be seen to move");

  private final String words;

  Response(String words) {
    this.words = words;
  }

  /** The words that follow "neck" in a condition. */
  public String words() {
    return words;
  }
}
