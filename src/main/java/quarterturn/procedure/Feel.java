package quarterturn.procedure;

/** How the rod nut felt under the key. */
public enum Feel {
  SMOOTH("smooth", "It turned smoothly, with even resistance"),
  STIFF("stiff", "It turned, but stiffly"),
  JAMMED("jammed", "It would not move with the force of two fingers"),
  FREE("free", "It turned with no resistance at all"),
  NOISE("noise", "It creaked, cracked or clicked"),
  SLIPPED("slipped", "The key slipped or rocked");

  private final String word;
  private final String label;

  Feel(String word, String label) {
    this.word = word;
    this.label = label;
  }

  public String word() {
    return word;
  }

  /** As an answer to "how did it feel?". */
  public String label() {
    return label;
  }
}
