package quarterturn.command;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.UnmatchedArgumentException;
import quarterturn.unit.Printable;

/** An error as the user should read it. */
final class Complaint {
  private Complaint() {}

  static String of(Exception e) {
    if (e instanceof FileSystemException file) {
      String reason = file.getReason();
      if (reason != null && !reason.isEmpty()) {
        String where = file.getFile();
        return where == null || reason.contains(where)
            ? clean(reason)
            : clean(where + ": " + reason);
      }
      if (e instanceof NoSuchFileException) {
        return "there is no file " + clean(file.getFile());
      }
      if (e instanceof AccessDeniedException) {
        return "no permission for " + clean(file.getFile()) + "; choose another folder with --data";
      }
    }
    if (e instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
      return clean(unmatched(unmatched));
    }
    return e.getMessage() == null
        ? "it stopped without a reason"
        : clean(e.getMessage().replaceFirst("is not a boolean$", "is not true or false"));
  }

  /** A word too many; where a command or a topic was to stand, those there are. */
  private static String unmatched(UnmatchedArgumentException e) {
    Set<String> names = e.getCommandLine().getSubcommands().keySet();
    return "\""
        + e.getUnmatched().get(0)
        + "\" "
        + (names.isEmpty() ? "has no place here" : "is none of " + String.join(", ", names));
  }

  private static String clean(String text) {
    return text.lines().map(Printable::of).collect(Collectors.joining(System.lineSeparator()));
  }
}
