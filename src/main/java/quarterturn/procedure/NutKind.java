package quarterturn.procedure;

/** What holds the strings at the headstock end. */
public enum NutKind {
  /** A slot for each string, cut to its height. */
  SLOTTED("slotted"),
  /** Clamps; its height is that of the whole, by shims. */
  LOCKING("locking"),
  /** The strings rest on a fret; the nut only spaces them. */
  ZERO_FRET("zero-fret");

  private final String word;

  NutKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
