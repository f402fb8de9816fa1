package quarterturn.procedure;

import org.jspecify.annotations.Nullable;

/** Which string a reading is taken on. */
public enum Which {
  LOWEST("lowest"),
  HIGHEST("highest"),
  /** Every string in turn, the lowest first. */
  EACH("each");

  private final String word;

  Which(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** " on the lowest string (E)", as far as the string and its name are known. */
  public static String on(@Nullable Which which, @Nullable String name) {
    if (which == null) {
      return name == null ? "" : " on the string " + name;
    }
    return " on the " + which.word + " string" + (name == null ? "" : " (" + name + ")");
  }
}
