package quarterturn.procedure.condition;

import quarterturn.unit.Worded;

/** How the rod nut felt under the key. */
public enum Feel implements Worded {
  SMOOTH("It turned smoothly, with even resistance"),
  STIFF("It turned, but stiffly"),
  JAMMED("It would not move with the force of two fingers"),
  FREE("It turned with no resistance at all"),
  NOISE("It creaked, cracked or clicked"),
  SLIPPED("The key slipped or rocked");

  private final String label;

  Feel(String label) {
    this.label = label;
  }

  /** The answer to "how did it feel?". */
  public String label() {
    return label;
  }
}
