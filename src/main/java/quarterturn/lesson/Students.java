package quarterturn.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** The names that students choose. */
public final class Students {
  private static final int LONGEST = 30;

  private Students() {}

  /**
   * Reads names with commas between them.
   *
   * @throws NotUnderstoodException where one of them is none
   */
  public static List<String> of(String typed) {
    List<String> out = new ArrayList<>();
    for (String one : Arrays.asList(typed.split(",", -1))) {
      String name = one.strip();
      if (!named(name)) {
        throw new NotUnderstoodException(
            "\""
                + Printable.of(name)
                + "\" is no name; a name has 1 to "
                + LONGEST
                + " characters on one line, with a comma before the next");
      }
      if (!out.contains(name)) {
        out.add(name);
      }
    }
    return List.copyOf(out);
  }

  /** Whether {@code name} can be a student's name. */
  public static boolean named(String name) {
    return !name.isBlank()
        && name.length() <= LONGEST
        && !name.contains(",")
        && name.equals(Printable.of(name));
  }

  /** The one of {@code names} that is meant, by itself or its beginning; null where none is. */
  public static @Nullable String match(String typed, List<String> names) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    List<String> begun =
        names.stream().filter(n -> n.toLowerCase(Locale.ROOT).startsWith(word)).toList();
    for (String name : begun) {
      if (name.toLowerCase(Locale.ROOT).equals(word)) {
        return name;
      }
    }
    return word.isEmpty() || begun.size() != 1 ? null : begun.get(0);
  }
}
