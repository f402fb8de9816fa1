package quarterturn.procedure;

/** What can be moved at a bridge. */
public enum BridgeKind {
  /** Saddles that can be raised and moved. */
  ADJUSTABLE("adjustable"),
  /** A saddle that stands as it was made. */
  FIXED("fixed"),
  /** Held between the strings and springs: each string's pull moves the others. */
  FLOATING("floating");

  private final String word;

  BridgeKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
