package quarterturn.session.journal;

/** Thrown for a JSON object that is not a known event; the message says what is wrong with it. */
public final class NotAnEventException extends Exception {
  private static final long serialVersionUID = 1L;

  public NotAnEventException(String message) {
    super(message);
  }
}
