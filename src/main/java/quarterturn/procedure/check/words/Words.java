package quarterturn.procedure.check.words;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sets of words, written as one reads them. */
final class Words {
  private Words() {}

  /** Whether a word is one of some words, which have a space between them. */
  static boolean has(String words, String word) {
    int length = word.length();
    int at = length == 0 ? -1 : words.indexOf(word);
    while (at >= 0) {
      boolean begins = at == 0 || words.charAt(at - 1) == ' ';
      boolean ends = at + length == words.length() || words.charAt(at + length) == ' ';
      if (begins && ends) {
        return true;
      }
      at = words.indexOf(word, at + 1);
    }
    return false;
  }

  /** The words of some lines, each once. */
  static Set<String> of(String... lines) {
    Set<String> all = new HashSet<>();
    for (String line : lines) {
      all.addAll(List.of(line.strip().split("\\s+")));
    }
    return Set.copyOf(all);
  }

  /** Phrases that are written one after the other, with a bar between. */
  static List<String> phrases(String... written) {
    return List.of(String.join("|", written).split("\\|"));
  }
}
