package quarterturn.session;

/** Events that the procedure at hand can't have led to, as after a change of its file. */
public final class RecordMismatchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RecordMismatchException(String message) {
    super(message);
  }
}
