package quarterturn.procedure.condition;

import quarterturn.craft.rod.Decision;

/** What may be the matter with a rod, as all its readings and turns together tell. */
public enum Doubt {
  DEAD("dead", Decision.Reason.NO_RESPONSE),
  REVERSED("reversed", Decision.Reason.WRONG_WAY),
  FULLY_LOOSE("fully loose", Decision.Reason.END_OF_TRAVEL);

  private final String words;
  private final Decision.Reason reason;

  Doubt(String words, Decision.Reason reason) {
    this.words = words;
    this.reason = reason;
  }

  /** The words that follow "rod seems" in a condition. */
  public String words() {
    return words;
  }

  /** The reason that the advisor gives for such a rod. */
  public Decision.Reason reason() {
    return reason;
  }
}
