package quarterturn.procedure.read.clause;

/** A condition that cannot be read, and the letter at which it goes wrong. */
public final class MisreadException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int at;
  private final String wrong;
  private final String mend;

  MisreadException(int at, String wrong, String mend) {
    super(wrong + ". " + mend);
    this.at = at;
    this.wrong = wrong;
    this.mend = mend;
  }

  /** Index into the condition's text. */
  public int at() {
    return at;
  }

  /** What was found at the letter where the condition goes wrong. */
  public String wrong() {
    return wrong;
  }

  /** What may stand at the letter where the condition goes wrong. */
  public String mend() {
    return mend;
  }
}
