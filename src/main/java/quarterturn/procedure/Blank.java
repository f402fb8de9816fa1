package quarterturn.procedure;

/** The names in braces that a text may carry; the session fills them in. */
public enum Blank {
  /** The fret held at the body joint. */
  JOINT("joint"),
  /** The fret over which relief is read. */
  READ_AT("read-at"),
  /** Note of the lowest string. */
  LOWEST("lowest"),
  /** Note of the highest string. */
  HIGHEST("highest"),
  /** The window of relief. */
  WINDOW("window"),
  /** Where the window comes from. */
  SOURCE("source"),
  /** The last reading of relief on the lowest string. */
  READING("reading"),
  /** The amount of the turn, without direction. */
  TURN("turn"),
  /** "tighten" or "loosen". */
  WAY("way"),
  /** "clockwise" or "anticlockwise", seen facing the rod nut's end. */
  SENSE("sense"),
  /** Where the rod stands from as found. */
  NET("net"),
  /** Name of the kind of instrument. */
  KIND("kind"),
  /** Length of a wait. */
  MINUTES("minutes");

  private final String word;

  Blank(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
