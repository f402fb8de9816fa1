package quarterturn.session.store.archive;

import java.io.IOException;

/** Thrown where a file is no whole archive; the message says why, after "it". */
final class NoArchiveException extends IOException {
  private static final long serialVersionUID = 1L;

  NoArchiveException(String why) {
    super(why);
  }
}
