package quarterturn.session;

/**
 * Thrown for a record whose events the present procedure can't lead to, such as after a change of
 * its file.
 */
public final class RecordMismatchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RecordMismatchException(String message) {
    super(message);
  }
}
