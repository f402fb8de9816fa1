package quarterturn.script;

/** A line that is not an answer to the present prompt; the message says why. */
final class BadAnswerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadAnswerException(String message) {
    super(message);
  }
}
