package quarterturn.session.store.archive;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file can't be read, in words. */
final class Reading {
  private Reading() {}

  static String why(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    if (e instanceof NoSuchFileException) {
      return "it is not there any more";
    }
    String why = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
    return why == null ? "no reason is given" : why;
  }
}
