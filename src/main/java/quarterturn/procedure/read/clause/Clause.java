package quarterturn.procedure.read.clause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Quote;

/** The words of a condition, taken one after the other. */
final class Clause {
  private static final Pattern WORD = Pattern.compile("\\S+");

  private record Word(String text, int at) {}

  private final String text;
  private final List<Word> words = new ArrayList<>();
  private int next;

  Clause(String text) {
    this.text = text;
    Matcher m = WORD.matcher(text);
    while (m.find()) {
      words.add(new Word(m.group(), m.start()));
    }
  }

  boolean atEnd() {
    return next >= words.size();
  }

  /** The word {@code ahead} places on, or nothing at the end. */
  String peek(int ahead) {
    return next + ahead < words.size() ? words.get(next + ahead).text() : "";
  }

  /** The offset of the next word in the text, or the text's end. */
  int at() {
    return at(0);
  }

  private int at(int ahead) {
    return next + ahead < words.size() ? words.get(next + ahead).at() : text.length();
  }

  String take() {
    String word = peek(0);
    next++;
    return word;
  }

  /** Takes all of {@code phrase} if it comes next. */
  boolean take(String phrase) {
    if (!phrase.startsWith(peek(0))) {
      return false;
    }
    int length = phrase.split(" ", -1).length;
    if (common(phrase) < length) {
      return false;
    }
    next += length;
    return true;
  }

  /** The rest of this clause, up to "and" or the end, with single spaces. */
  String takeRest() {
    StringBuilder rest = new StringBuilder();
    while (!atEnd() && !peek(0).equals("and")) {
      rest.append(rest.isEmpty() ? "" : " ").append(take());
    }
    return rest.toString();
  }

  /** How many words of {@code phrase} come next. */
  private int common(String phrase) {
    String[] parts = phrase.split(" ", -1);
    int same = 0;
    while (same < parts.length && parts[same].equals(peek(same))) {
      same++;
    }
    return same;
  }

  /**
   * The fault that none of {@code phrases} comes next, at the first word that fits none of them.
   *
   * @param after what stands before, for the message
   * @param shown the phrases as the message lists them
   */
  MisreadException noneOf(List<String> phrases, String after, List<String> shown) {
    int most = phrases.stream().mapToInt(this::common).max().orElse(0);
    String found = peek(most);
    List<String> possible =
        phrases.stream()
            .filter(phrase -> common(phrase) == most)
            .map(phrase -> phrase.split(" ", -1))
            .filter(parts -> parts.length > most)
            .map(parts -> parts[most])
            .toList();
    boolean missing = found.isEmpty() || found.equals("and");
    String wrong = missing ? "something is missing here" : Quote.of(found) + " cannot stand here";
    String mend = "Allowed after " + after + ": " + String.join(", ", shown);
    return new MisreadException(
        at(most), wrong, missing ? mend : Quote.hint(found, possible, mend));
  }

  /** Takes the one of {@code all} whose words come next. */
  <T> T oneOf(String after, T[] all, Function<T, String> phrase) throws MisreadException {
    for (T one : all) {
      if (take(phrase.apply(one))) {
        return one;
      }
    }
    List<String> phrases = Arrays.stream(all).map(phrase).toList();
    throw noneOf(phrases, after, phrases);
  }

  /**
   * Takes one of {@code all} or several with "or" between them, by their words, which come next.
   */
  <T> Condition anyOf(String after, T[] all, Function<T, String> phrase, Function<T, Condition> of)
      throws MisreadException {
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add(of.apply(oneOf(after, all, phrase)));
    } while (take("or"));
    return any(parts);
  }

  /** A condition that holds where one of {@code parts} does. */
  static Condition any(List<Condition> parts) {
    return parts.size() == 1 ? parts.get(0) : new Condition.Any(parts);
  }
}
