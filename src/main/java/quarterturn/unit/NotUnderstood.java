package quarterturn.unit;

/** Typed text that is no value of the wanted unit; the message says what may be typed instead. */
public final class NotUnderstood extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public NotUnderstood(String message) {
    super(message);
  }
}
