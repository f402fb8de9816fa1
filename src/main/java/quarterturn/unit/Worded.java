package quarterturn.unit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A constant that is written as its name in small letters with hyphens. */
public interface Worded {
  String name();

  /** The constant as a file or a command line has it, such as "zero-fret". */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The words of constants, in the given order. */
  static List<String> words(Worded... all) {
    return Arrays.stream(all).map(Worded::word).toList();
  }
}
