package quarterturn.procedure.check.words;

import java.util.List;

/**
 * A part of a sentence between two marks of punctuation.
 *
 * @param words in small letters; a blank is one word, as {@code {way}}
 * @param all the words with a space around each
 * @param opener the mark before it; empty at the beginning of a sentence
 * @param asked whether it belongs to a question
 */
record Segment(List<String> words, String all, String opener, boolean asked) {
  Segment(List<String> words, String opener, boolean asked) {
    this(List.copyOf(words), " " + String.join(" ", words) + " ", opener, asked);
  }

  int size() {
    return words.size();
  }

  /** The word at a place; empty beyond either end. */
  String at(int place) {
    return place < 0 || place >= words.size() ? "" : words.get(place);
  }

  /** Whether some words stand in it one after the other. */
  boolean says(String phrase) {
    int place = all.indexOf(phrase);
    while (place >= 0) {
      if (all.charAt(place - 1) == ' ' && all.charAt(place + phrase.length()) == ' ') {
        return true;
      }
      place = all.indexOf(phrase, place + 1);
    }
    return false;
  }

  /** Whether one of some phrases stands in it. */
  boolean saysOneOf(List<String> phrases) {
    return phrases.stream().anyMatch(this::says);
  }
}
