package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The names that a typed line may use.
 *
 * @param strings the notes of the strings, lowest first; empty where the kind is not known yet
 * @param choices the options that can be chosen, by the id of the step; an empty list where the
 *     step takes words
 * @param gaugeMm the gauge's step in millimetres, put around a single number
 */
public record Terms(List<String> strings, Map<String, List<String>> choices, double gaugeMm) {
  public Terms {
    strings = List.copyOf(strings);
    choices = Map.copyOf(choices);
  }

  /**
   * The index of the string that a word means, 0 for the lowest, or -1: low, high, a note, or s1 to
   * s6.
   */
  int string(String word) {
    if (word.equals("low")) {
      return 0;
    } else if (word.equals("high")) {
      return last();
    }
    for (int i = 0; i < strings.size(); i++) {
      if (strings.get(i).equalsIgnoreCase(word) || word.equals("s" + (i + 1))) {
        return i;
      }
    }
    return -1;
  }

  int last() {
    return Math.max(1, strings.size()) - 1;
  }

  List<String> stringWords() {
    List<String> words = new ArrayList<>(List.of("low", "high"));
    words.addAll(strings);
    return words;
  }

  /** Every word that completion can offer. */
  public List<String> words() {
    List<String> words = new ArrayList<>(Name.words());
    words.addAll(stringWords());
    choices.keySet().stream().sorted().forEach(words::add);
    return words;
  }
}
