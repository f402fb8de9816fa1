package quarterturn.session.journal;

import java.io.IOException;

/**
 * Thrown where an open file is not the one at its path any more. All that it holds was written into
 * another, of which the message tells.
 */
public final class DisplacedException extends IOException {
  private static final long serialVersionUID = 1L;

  private final String lost;

  /**
   * @param lost whole sentences on what happened and where everything stands now
   * @param goOn what to do next
   */
  DisplacedException(String lost, String goOn) {
    super(lost + " " + goOn);
    this.lost = lost;
  }

  /** The same with other words on what to do next. */
  public DisplacedException goOn(String how) {
    DisplacedException other = new DisplacedException(lost, how);
    other.initCause(this);
    return other;
  }
}
