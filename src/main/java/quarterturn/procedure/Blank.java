package quarterturn.procedure;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a step's text, written {@code {reading}}, that is filled in when it is shown. */
public enum Blank {
  JOINT("joint", "the fret held at the body joint"),
  READ_AT("read-at", "the fret over which the gap is read"),
  LOWEST("lowest", "the note of the lowest string"),
  HIGHEST("highest", "the note of the highest string"),
  WINDOW("window", "the window for this player"),
  SOURCE("source", "where the window comes from"),
  READING("reading", "the last reading"),
  TURN("turn", "how far to turn"),
  WAY("way", "tighten or loosen"),
  SENSE("sense", "clockwise or anticlockwise, facing the rod nut's end"),
  NET("net", "where the rod stands from as found"),
  KIND("kind", "the kind of instrument"),
  MINUTES("minutes", "how long to wait, in minutes"),
  STRING("string", "the note of the string at hand"),
  VALUE("value", "the last reading on that string"),
  TARGET("target", "the window of that reading"),
  ORDER("order", "how far to set that string's saddle or pickup"),
  EFFECT("effect", "what the change of relief did to the action"),
  ARC("arc", "how the strings stand over the rounded board"),
  SHIM("shim", "the shim that would bring the saddles into reach"),
  PULL("pull", "what the old and the new strings pull"),
  CONTACT("contact", "where this player's stroke meets the frets, and what would cure it"),
  MOISTURE("moisture", "the wood's moisture in this air"),
  STALE("stale", "the results that are stale");

  static final Pattern WRITTEN = Pattern.compile("\\{([^{}]*)\\}");

  private final String word;
  private final String meaning;

  Blank(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The word between the braces. */
  public String word() {
    return word;
  }

  /** What is filled in. */
  public String meaning() {
    return meaning;
  }

  /** {@code text} with every blank filled by {@code words}; anything else stays as it is. */
  public static String fill(String text, Function<Blank, String> words) {
    Matcher m = WRITTEN.matcher(text);
    return m.replaceAll(
        found -> {
          for (Blank blank : values()) {
            if (blank.word.equals(found.group(1))) {
              return Matcher.quoteReplacement(words.apply(blank));
            }
          }
          return Matcher.quoteReplacement(found.group());
        });
  }
}
