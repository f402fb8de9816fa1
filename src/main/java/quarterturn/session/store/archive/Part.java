package quarterturn.session.store.archive;

import quarterturn.session.journal.LogFormat;

/** A part of a data folder, whose files are all of one sort. */
public enum Part {
  SESSIONS("sessions", LogFormat.ENDING, "session"),
  INSTRUMENTS("instruments", ".yaml", "instrument");

  private final String folder;
  private final String ending;
  private final String one;

  Part(String folder, String ending, String one) {
    this.folder = folder;
    this.ending = ending;
    this.one = one;
  }

  /** The name of its folder. */
  public String folder() {
    return folder;
  }

  String ending() {
    return ending;
  }

  /** What one of its files holds. */
  public String one() {
    return one;
  }
}
