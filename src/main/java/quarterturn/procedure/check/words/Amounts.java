package quarterturn.procedure.check.words;

import java.util.List;
import java.util.Set;

/** Amounts of turning, in figures and in words, and ways round. */
final class Amounts {
  private static final Set<String> PARTS =
      Words.of(
          "half quarter eighth sixteenth third halves quarters eighths sixteenths thirds fifth sixth",
          "twelfth thirty-second tenth");

  private static final Set<String> WHOLE = Words.of("full whole complete single firm good");

  private static final Set<String> UNITS =
      Words.of(
          "turn turns revolution revolutions rotation rotations degrees degree deg degs o'clock flat",
          "flats facet facets radian radians rev revs clicks click notch notches");

  private static final Set<String> NUMBERS =
      Words.of(
          "one two three four five six seven eight nine ten eleven twelve a an another full whole",
          "complete single couple few several more fifteen twenty thirty forty sixty ninety extra",
          "further forty-five fortyfive small tiny big hundred eighty second little fresh");

  /** What a part of something else than a turn is measured in. */
  private static final Set<String> OTHER =
      Words.of(
          "hour hours minute minutes second seconds day days tone tones semitone step mm millimetre",
          "millimetres millimeter inch inches in cm cent cents string length pull way c f year week",
          "card sheet pitch octave note space percent % fret frets gap thickness size movement weeks");

  private static final Set<String> WAYS =
      Words.of("clockwise anticlockwise counterclockwise widdershins {sense} righty lefty sunwise");

  private static final List<String> ROUND =
      Words.phrases(
          "half way round|halfway round|half way around|halfway around|half round",
          "all the way round|all the way around|once round|once around|right round",
          "full circle|half a circle|quarter circle|quarter of a circle|twice round",
          "half circle|right the way round|one round");

  static final List<String> MORE =
      Words.phrases(
          "more|further|another|again|extra|additional|bit|little|touch|hair|tad|notch",
          "smidgen|until|till|harder|tighter|looser|farther|on|off|round|around|fully|home",
          "as far as|to the right|to the left|to the stop|all the way|up|down|back|in|out",
          "tight|loose|some|twice|past|same|over|right|left|toward you|towards you",
          "away from you|once|lot|time|times");

  /** What makes going on with something a turn, where the rod is spoken of. */
  static final List<String> ON =
      Words.phrases(
          "until|till|more|further|another|again|bit|little|the same|twice|harder|turning",
          "that way|once|times|off|back|hard|fully|completely|firmly|tight|all the way",
          "beyond|past");

  /** Words that make a limit of the amount after or before them. */
  private static final List<String> LIMITS =
      Words.phrases(
          "at most|no more than|not more than|up to|less than|more than|within|the limit",
          "or less|or more|never more|the most");

  private Amounts() {}

  /** Whether a segment speaks of an amount of turning from one place to another. */
  static boolean in(Segment at, int from, int to) {
    for (int place = from; place < to; place++) {
      if (begins(at, place)) {
        return true;
      }
    }
    return false;
  }

  /** Whether an amount that is no limit stands in a whole segment. */
  static boolean in(Segment at) {
    boolean round = at.all().contains("round ") || at.all().contains("circle ");
    return in(at, 0, at.size()) && !at.saysOneOf(LIMITS) || round && at.saysOneOf(ROUND);
  }

  static boolean limited(Segment at) {
    return at.saysOneOf(LIMITS);
  }

  /** Whether a word is a part or the whole of a turn, as quarter. */
  static boolean part(String word) {
    return PARTS.contains(word) || WHOLE.contains(word);
  }

  private static boolean begins(Segment at, int place) {
    String word = at.at(place);
    if (word.equals("{turn}")) {
      return true;
    }
    boolean part = PARTS.contains(word) || fraction(word);
    boolean figure = part || number(word);
    String next = at.at(place + 1);
    if (figure && UNITS.contains(next)) {
      return !(next.startsWith("deg") && Words.has("c f celsius", at.at(place + 2)));
    }
    if (!part) {
      return place + 1 < at.size() && number(word) && turn(at, place + 1);
    }
    int after = place + 1;
    while (Words.has("of a an the full whole", at.at(after))) {
      after++;
    }
    String unit = at.at(after);
    return UNITS.contains(unit)
        || unit.equals("way") && at.at(after + 1).startsWith("r")
        || after == place + 1 && !OTHER.contains(unit) && bare(at, place);
  }

  /** A part with no unit, as in "another eighth"; "half" alone says too little. */
  private static boolean bare(Segment at, int place) {
    String word = at.at(place);
    String before = at.at(place - 1);
    boolean measured =
        !word.equals("halves")
            && (NUMBERS.contains(before) || Words.has("by 1 2 3 further", before));
    return fraction(word) ? !Part.OTHER.equals(Part.named(at.at(place + 1))) : measured;
  }

  /** Whether turns are counted here: another turn, two more turns. */
  private static boolean turn(Segment at, int place) {
    for (int on = place; on < place + 3; on++) {
      if (UNITS.contains(at.at(on))) {
        return true;
      }
      if (!NUMBERS.contains(at.at(on)) && !PARTS.contains(at.at(on))) {
        return false;
      }
    }
    return false;
  }

  private static boolean number(String word) {
    return NUMBERS.contains(word)
        || !word.isEmpty() && Character.isDigit(word.charAt(word.length() - 1));
  }

  private static boolean fraction(String word) {
    return number(word) && (word.indexOf('/') > 0 || word.startsWith("0.") || word.startsWith("."));
  }

  /** Whether a word may stand before turns that are counted. */
  static boolean counts(String word) {
    return number(word) || part(word);
  }

  /** Whether a way round is named: clockwise, or against it. */
  static boolean way(Segment at) {
    return at.words().stream().anyMatch(WAYS::contains);
  }

  /** Whether an amount or a way is said that the program does not fill in. */
  static boolean literal(Segment at) {
    List<String> words = at.words().stream().filter(word -> !word.startsWith("{")).toList();
    Segment rest = new Segment(words, at.opener(), at.asked());
    return in(rest) || way(rest);
  }

  static boolean more(Segment at) {
    return at.saysOneOf(MORE);
  }
}
