package quarterturn.procedure.check.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence of a text.
 *
 * @param said as it is written
 * @param segments its parts, in their order
 */
record Sentence(String said, List<Segment> segments) {
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\{[^{}]*+\\}|\\d++(?:[./]\\d++)*+|\\.\\d++|[a-z]++(?:['-][a-z]++)*+|--++|\\s++-\\s|->|\\S");

  /**
   * Longer stretches without a mark are read in parts, so that reading takes no longer for them.
   */
  private static final int MOST_WORDS = 100;

  private static final int MOST_SEGMENTS = 100;

  private static final Set<String> MARKS = Words.of(", ; : ( ) [ ] – — -- - -> . ! ? … • * = |");

  private static final Set<String> ASKING =
      Words.of(
          "do does did is are was were has have had can could will would should shall may might must",
          "what which who how why where when whose don't doesn't isn't aren't am");

  /** What at the end of a sentence makes a question of an order, and leaves it one. */
  private static final Set<String> TAGS =
      Words.of("ok okay right yes will would can could you please alright all now won't");

  Sentence {
    segments = List.copyOf(segments);
  }

  /** The sentences of a text. */
  static List<Sentence> of(String text) {
    List<Sentence> all = new ArrayList<>();
    int from = 0;
    for (int at = 0; at < text.length(); at++) {
      if (ends(text, at)) {
        add(all, text.substring(from, at + 1));
        from = at + 1;
      }
    }
    add(all, text.substring(from));
    return all;
  }

  private static boolean ends(String text, int at) {
    char c = text.charAt(at);
    if (c == '\n') {
      String next = text.substring(at).stripLeading();
      return next.isEmpty() || !Character.isLowerCase(next.charAt(0)) && next.charAt(0) != '{';
    }
    boolean last = at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1));
    return last && (c == '.' || c == '!' || c == '?');
  }

  private static void add(List<Sentence> all, String said) {
    List<Segment> segments = segments(tokens(Spelling.plain(said)));
    for (int at = 0; at < segments.size(); at += MOST_SEGMENTS) {
      int to = Math.min(at + MOST_SEGMENTS, segments.size());
      all.add(new Sentence(said.strip().replaceAll("\\s++", " "), segments.subList(at, to)));
    }
  }

  private static List<String> tokens(String plain) {
    List<String> all = new ArrayList<>();
    boolean broken = false;
    for (Matcher m = TOKEN.matcher(plain); m.find(); ) {
      String word = m.group().strip();
      int last = all.size() - 1;
      if (broken && last >= 0 && Verbs.known(all.get(last) + word)) {
        all.set(last, all.get(last) + word);
        broken = false;
        continue;
      }
      broken = word.equals("-");
      if (word.indexOf('-') > 0 && Character.isLetter(word.charAt(0))) {
        String joined = word.replace("-", "");
        all.addAll(Verbs.known(joined) ? List.of(joined) : List.of(word.split("-")));
      } else if (!broken || m.group().length() > 1) {
        all.addAll(Lexicon.spelled(word));
      }
    }
    return all;
  }

  private static List<Segment> segments(List<String> tokens) {
    List<Segment> all = new ArrayList<>();
    List<String> words = new ArrayList<>();
    String opener = "";
    for (String token : tokens) {
      if (!MARKS.contains(token) && words.size() < MOST_WORDS) {
        words.add(token);
      } else {
        if (!words.isEmpty()) {
          all.add(new Segment(words, opener, false));
          words.clear();
          opener = token;
        }
        if (!MARKS.contains(token)) {
          words.add(token);
        }
      }
    }
    if (!words.isEmpty()) {
      all.add(new Segment(words, opener, false));
    }
    boolean question = !tokens.isEmpty() && tokens.get(tokens.size() - 1).equals("?");
    return question ? asked(all) : all;
  }

  /** A question begins where it turns to asking: after a colon, or with a word that asks. */
  private static List<Segment> asked(List<Segment> all) {
    int last = all.size() - 1;
    if (last > 0 && TAGS.containsAll(all.get(last).words())) {
      return all;
    }
    int from = 0;
    for (int at = 1; at <= last; at++) {
      boolean turns = !all.get(at).opener().equals(",") && !all.get(at).opener().equals("(");
      if (turns || ASKING.contains(all.get(at).at(0))) {
        from = at;
        break;
      }
    }
    List<Segment> asked = new ArrayList<>(all.subList(0, from));
    for (Segment one : all.subList(from, all.size())) {
      asked.add(new Segment(one.words(), one.opener(), true));
    }
    return asked;
  }
}
