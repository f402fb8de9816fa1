package quarterturn.session.journal;

/** A JSON object that is no event this program knows; the message says what is wrong with it. */
public final class NotAnEventException extends Exception {
  private static final long serialVersionUID = 1L;

  public NotAnEventException(String message) {
    super(message);
  }
}
