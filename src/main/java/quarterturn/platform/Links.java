package quarterturn.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files with more than one name. */
public final class Links {
  private Links() {}

  /** How many names a file has; 2 where the platform does not tell. */
  public static int to(Path file) throws IOException {
    try {
      return Files.getAttribute(file, "unix:nlink") instanceof Integer many ? many : 2;
    } catch (UnsupportedOperationException | IllegalArgumentException e) {
      return 2;
    }
  }
}
