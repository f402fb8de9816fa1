package quarterturn.session;

/** Thrown for an answer that the prompt does not take; the message says what it takes. */
public final class RefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  public RefusedException(String message) {
    super(message);
  }
}
