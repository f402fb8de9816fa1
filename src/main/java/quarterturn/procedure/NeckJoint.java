package quarterturn.procedure;

/** How a neck is joined to the body. */
public enum NeckJoint {
  /** Screwed on, so that it can come off, and be tilted by a shim. */
  BOLT_ON("bolt-on"),
  /** Glued in. */
  SET("set"),
  UNKNOWN("unknown");

  private final String word;

  NeckJoint(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
