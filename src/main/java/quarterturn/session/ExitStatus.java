package quarterturn.session;

/** The exit statuses of the program, by how a face ended. */
public final class ExitStatus {
  /** The session is done, or was left in order. */
  public static final int DONE = 0;

  /** The session ended with a hand-over. */
  public static final int HAND_OVER = 1;

  /** Something could not be read or written. */
  public static final int FAILED = 2;

  /**
   * Stopped by Ctrl-C, after leaving in order: 128 and the number of the signal, as shells have it.
   */
  public static final int INTERRUPTED = 130;

  private ExitStatus() {}
}
