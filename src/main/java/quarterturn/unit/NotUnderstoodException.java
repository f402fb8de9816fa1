package quarterturn.unit;

/**
 * Thrown for typed text that is not a value of the wanted type; the message says what may be typed.
 */
public final class NotUnderstoodException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String wrong;
  private final String mend;

  public NotUnderstoodException(String message) {
    super(message);
    this.wrong = message;
    this.mend = "";
  }

  /**
   * @param wrong what is wrong with the text
   * @param mend what may be typed instead
   */
  public NotUnderstoodException(String wrong, String mend) {
    super(wrong + "; " + mend);
    this.wrong = wrong;
    this.mend = mend;
  }

  /** What is wrong with the typed text. */
  public String wrong() {
    return wrong;
  }

  /** What may be typed instead; empty where {@link #wrong} says it all. */
  public String mend() {
    return mend;
  }
}
