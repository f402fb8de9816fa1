package quarterturn.procedure;

/**
 * What a confirmed step or a chosen option establishes about the bench. The limits name those that
 * a rod turn needs, so that no procedure can leave one out.
 */
public enum Fact {
  ROD_IDENTIFIED("rod-identified", "the rod is identified"),
  KEY_FITS("key-fits", "the key fits to full depth"),
  AT_PITCH("at-pitch", "the strings are at pitch"),
  DETUNED("detuned", "the strings are detuned"),
  SETTLED("settled", "the neck has settled"),
  NECK_LOOSE("neck-loose", "the neck is loose in its pocket"),
  NECK_FAST("neck-fast", "the neck is fast in its pocket");

  private final String word;
  private final String meaning;

  Fact(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The word that stands for it in a file. */
  public String word() {
    return word;
  }

  /** As a clause: "the strings are at pitch". */
  public String meaning() {
    return meaning;
  }
}
