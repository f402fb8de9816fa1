package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a typed line can speak about.
 *
 * @param strings the notes of the strings, lowest first; empty where the kind is not known yet
 * @param choices by the id of a step, the options that can be chosen there; none for a line of
 *     words
 * @param gaugeMm the step of the gauge, put around a single number
 */
public record Terms(List<String> strings, Map<String, List<String>> choices, double gaugeMm) {
  public Terms {
    strings = List.copyOf(strings);
    choices = Map.copyOf(choices);
  }

  /** Which string a word means, or -1: low, high, its note, or s1 for the lowest. */
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

  /** Everything that completion can offer. */
  public List<String> words() {
    List<String> words = new ArrayList<>(Name.words());
    words.addAll(stringWords());
    choices.keySet().stream().sorted().forEach(words::add);
    return words;
  }
}
