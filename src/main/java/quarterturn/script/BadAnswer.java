package quarterturn.script;

/** A line that is no answer to this prompt; the message says why. */
final class BadAnswer extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadAnswer(String message) {
    super(message);
  }
}
