package quarterturn.procedure.check.words;

import java.util.Set;

/** Acts that change an instrument, and what a step has to be or to establish that orders one. */
public enum Act {
  TURN_ROD("turn", "a turn step (turn: rod, as advised)", false),
  /** One string is let down: it is read off pitch then. */
  EASE_STRING("", "", true),
  SLACKEN("detuned new-set", "establishes: [detuned]", true),
  RAISE_PITCH("at-pitch new-set new-strings", "establishes: [at-pitch]", true),
  CHANGE_STRINGS("new-strings new-set", "changes: new-strings, or new-set", true),
  CUT_STRING("new-strings new-set", "changes: new-strings, or new-set", false),
  LOOSEN_NECK("neck-loose", "establishes: [neck-loose]", false),
  FASTEN_NECK("neck-fast neck-refit", "establishes: [neck-fast]", false),
  LOWER_SADDLE(
      "saddle-height saddle-place neck-refit",
      "an adjust step (what: saddle-height, or saddle-place)",
      false),
  RAISE_SADDLE("saddle-height neck-refit", "an adjust step (what: saddle-height)", true),
  SET_PICKUP("pickup-height", "an adjust step (what: pickup-height)", true),
  WORK_NUT("nut", "changes: nut", false),
  WORK_FRETS("fret-work", "changes: fret-work", false),
  /** Work that no sheet orders of its reader. */
  REPAIR("", "a hand-over", false),
  WORK_WOOD("neck-refit nut fret-work", "the change it makes (changes)", false);

  private final Set<String> needs;
  private final String mend;
  private final boolean inEnds;

  Act(String needs, String mend, boolean inEnds) {
    this.needs = Words.of(needs);
    this.mend = mend;
    this.inEnds = inEnds;
  }

  /** What a step may be, establish or change, one of which goes with the act. */
  public Set<String> needs() {
    return needs;
  }

  /** What to give the step, in words of a file. */
  public String mend() {
    return mend;
  }

  /** Whether the last words of a procedure may ask for it, though an end establishes nothing. */
  public boolean inEnds() {
    return inEnds;
  }
}
