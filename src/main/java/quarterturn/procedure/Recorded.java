package quarterturn.procedure;

/** What a note or a choice puts on record that the program itself asks for again. */
public enum Recorded {
  /** What the player complains of. */
  COMPLAINT("complaint"),
  /** The diameters of the strings that are on. */
  GAUGES("gauges"),
  /** The diameters of the strings that will be on. */
  NEW_GAUGES("new-gauges"),
  /** Which strings are to be on; the last option is another set. */
  STRINGS("strings"),
  /** Whether every saddle can be set; the last option is that they can't. */
  SADDLES("saddles"),
  /** Whether there are pickups that can be set; the last option is that there are none. */
  PICKUPS("pickups"),
  /** Whether the neck is read again a day later; the last option is that it is. */
  NEXT_DAY("next-day");

  private final String word;

  Recorded(String word) {
    this.word = word;
  }

  /** As a procedure names it. */
  public String word() {
    return word;
  }
}
