package quarterturn.session;

/** An answer that the prompt does not take; the message says what it takes. */
public final class Refused extends Exception {
  private static final long serialVersionUID = 1L;

  public Refused(String message) {
    super(message);
  }
}
