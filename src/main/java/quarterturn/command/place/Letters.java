package quarterturn.command.place;

import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/** Letters that this machine's locale can't hold, so that no file of such a name is found. */
public final class Letters {
  /** What stands for a letter that could not be read. */
  private static final char UNREAD = '\ufffd';

  private Letters() {}

  /**
   * What to set where one of the typed words could not be read; null where all could.
   *
   * @param encoding of the names of files
   */
  public static @Nullable String unread(List<String> typed, String encoding) {
    for (String word : typed) {
      if (!anyLetter(encoding) && word.indexOf(UNREAD) >= 0) {
        return set(word, encoding);
      }
    }
    return null;
  }

  /**
   * What is wrong with a path that can be none, or with one behind it; null where that is not it.
   */
  public static @Nullable String of(Throwable thrown, String encoding) {
    for (Throwable e = thrown; e != null; e = e.getCause()) {
      if (e instanceof InvalidPathException path) {
        boolean plain = path.getInput().chars().allMatch(c -> c < 0x80);
        return plain || anyLetter(encoding)
            ? "\"" + Printable.of(path.getInput()) + "\" can be no path; write another"
            : set(path.getInput(), encoding);
      }
    }
    return null;
  }

  private static String set(String word, String encoding) {
    return "\""
        + Printable.of(word)
        + "\" has letters that the locale here ("
        + encoding
        + ") can't hold; set LC_ALL=C.UTF-8 and try again";
  }

  private static boolean anyLetter(String encoding) {
    return encoding.toUpperCase(Locale.ROOT).replace("-", "").equals("UTF8");
  }
}
