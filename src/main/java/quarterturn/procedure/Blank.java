package quarterturn.procedure;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.unit.Worded;

/** A place in a step's text, written {@code {reading}}, that is filled in when it is shown. */
public enum Blank implements Worded {
  JOINT("the fret held at the body joint"),
  READ_AT("the fret over which the gap is read"),
  LAST("the last fret"),
  LOWEST("the note of the lowest string"),
  HIGHEST("the note of the highest string"),
  NOTES("the notes of the open strings, the lowest first"),
  TONE_DOWN("the same notes, each with the one a whole tone below"),
  WINDOW("the range for this player"),
  SOURCE("where the range comes from"),
  READING("the last reading"),
  TURN("how far to turn"),
  WAY("tighten or loosen"),
  SENSE("clockwise or anticlockwise, facing the truss rod nut's end, and as on a clock"),
  NET("where the rod stands from as found"),
  NEXT_TURN("what the next turn should change"),
  KIND("the kind of instrument"),
  MINUTES("how long to wait, in minutes"),
  STRING("the note of the string at hand"),
  VALUE("the last reading on that string"),
  TARGET("the range of that reading"),
  ORDER("how far to set that string's saddle or pickup"),
  EFFECT("what the change of relief did to the action"),
  ARC("how the strings stand over the rounded fingerboard"),
  SHIM("the shim that would bring the saddles into reach"),
  POSTS("how far to set the two ends of the bridge"),
  SADDLE("what a saddle in one piece lacks, and what would be left of it"),
  FRET_PLACES("where the frets that are read at lie, from the nut"),
  PLAY_FOUND("what the play test found at intake"),
  PULL("what the old and the new strings pull"),
  CONTACT("where this player's stroke meets the frets, and what would cure it"),
  MOISTURE("the wood's moisture in this air"),
  STALE("the results that are stale");

  public static final Pattern WRITTEN = Pattern.compile("\\{([^{}]*)\\}");

  private final String meaning;

  Blank(String meaning) {
    this.meaning = meaning;
  }

  /** What is filled in here, in words. */
  public String meaning() {
    return meaning;
  }

  /** {@code text} with every blank filled by {@code words}; anything else stays as it is. */
  public static String fill(String text, Function<Blank, String> words) {
    Matcher m = WRITTEN.matcher(text);
    return m.replaceAll(
        found -> {
          for (Blank blank : values()) {
            if (blank.word().equals(found.group(1))) {
              return Matcher.quoteReplacement(words.apply(blank));
            }
          }
          return Matcher.quoteReplacement(found.group());
        });
  }
}
