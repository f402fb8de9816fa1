package quarterturn.procedure.kind;

import org.jspecify.annotations.Nullable;
import quarterturn.unit.Worded;

/** Which string a reading is taken on. */
public enum Which implements Worded {
  LOWEST,
  HIGHEST,
  /** Every string in turn, the lowest first. */
  EACH;

  /** The string in words, as far as it and its name are known: " on the lowest string (E)". */
  public static String on(@Nullable Which which, @Nullable String name) {
    if (which == null) {
      return name == null ? "" : " on the string " + name;
    }
    return " on the " + which.word() + " string" + (name == null ? "" : " (" + name + ")");
  }
}
