package quarterturn.session.journal;

import java.io.IOException;
import java.nio.file.Path;

/** A second process: opens the journal it is given and says by its exit code how that went. */
final class OpenOnce {
  static final int OPENED = 40;
  static final int IN_USE = 41;

  private OpenOnce() {}

  public static void main(String[] args) throws IOException {
    int code = OPENED;
    try {
      Journal.open(Path.of(args[0])).close();
    } catch (Journal.InUse e) {
      code = IN_USE;
    }
    System.exit(code);
  }
}
