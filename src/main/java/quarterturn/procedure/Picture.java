package quarterturn.procedure;

/** The pictures a step can ask for. */
public enum Picture {
  /** Which frets are held and where the gap is read. */
  HOLD("hold"),
  /** The neck's curve with its window and its reading. */
  CURVE("curve"),
  /** The turn dial, seen from the rod nut's end. */
  DIAL("dial"),
  /** Where a rod nut can be. */
  PLACES("places"),
  /** A key in its socket: seated, and not. */
  KEY("key"),
  /** Where the player's stroke meets the frets. */
  CONTACT("contact");

  private final String word;

  Picture(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
