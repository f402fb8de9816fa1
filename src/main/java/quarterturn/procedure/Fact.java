package quarterturn.procedure;

import quarterturn.unit.Worded;

/**
 * A fact about the bench that a confirmed step or a chosen option establishes. The limits name
 * those that a rod turn needs, so that no procedure can leave one out.
 */
public enum Fact implements Worded {
  ROD_IDENTIFIED("the rod is identified"),
  KEY_FITS("the key fits to full depth"),
  AT_PITCH("the strings are at pitch"),
  DETUNED("the strings are detuned"),
  SETTLED("the neck has settled"),
  NECK_LOOSE("the neck is loose in its pocket"),
  NECK_FAST("the neck is fast in its pocket"),
  ROD_TWO_WAY("the rod can push either way");

  private final String meaning;

  Fact(String meaning) {
    this.meaning = meaning;
  }

  /** The fact as a clause: "the strings are at pitch". */
  public String meaning() {
    return meaning;
  }
}
