package quarterturn.lesson.teacher;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.lesson.Value;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Reads the value that a bench reads to its teacher. */
public final class ReadBack {
  private static final Pattern OK =
      Pattern.compile("ok(ay)?|y|yes|yep|fine|good|done|sure|right|go( on)?");
  private static final Pattern WAY = Pattern.compile("(tighten|loosen)(?:ed)?\\s+(.+)");
  private static final Pattern NUMBER =
      Pattern.compile("([-+]?(?:\\d{1,9}(?:[.,]\\d{0,9})?|[.,]\\d{1,9}))\\s*(.*)");

  /** The gauge step assumed for a reading with an open end, in millimetres. */
  private static final double STEP_MM = 0.05;

  private ReadBack() {}

  /**
   * Reads what was typed as a value of the kind of {@code kept}, whether or not they agree.
   *
   * @throws NotUnderstoodException saying what can be typed; a nod is no value
   */
  public static Value of(String typed, Value kept) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (kept instanceof Value.None) {
      if (text.isEmpty() || text.equals("nothing")) {
        return Value.NONE;
      }
      throw new NotUnderstoodException("nothing is to be read back here; leave the value out");
    }
    if (text.isEmpty()) {
      throw new NotUnderstoodException(
          "have the bench read its value to you, and type it, for example " + example(kept));
    }
    if (OK.matcher(text).matches()) {
      throw new NotUnderstoodException(
          "\""
              + Printable.of(typed.strip())
              + "\" is no value; type what the bench reads to you, for example "
              + example(kept));
    }
    if (kept instanceof Value.Gap gap) {
      return new Value.Gap(gap(text, gap.bracket()));
    }
    return kept instanceof Value.Rod ? rod(typed, text) : number(typed, text, kept);
  }

  /**
   * An example of how a value of this kind is written; never the value itself, which the desk does
   * not tell.
   */
  public static String example(Value kept) {
    if (kept instanceof Value.Gap) {
      return another("0.10 to 0.15", "0.20 to 0.25", kept) + ", or touches";
    }
    return kept instanceof Value.Rod
        ? another("loosen 3/16", "tighten 1/16", kept)
        : kept instanceof Value.Number ? another("12", "15", kept) : "";
  }

  private static String another(String one, String other, Value kept) {
    return of(one, kept).agrees(kept) ? other : one;
  }

  /** The kind of value to read back, in a word or two. */
  public static String kind(Value kept) {
    if (kept instanceof Value.Gap) {
      return "a gap";
    }
    return kept instanceof Value.Rod
        ? "a turn with its way"
        : kept instanceof Value.Number number ? "a number in " + number.unit() : "nothing";
  }

  /** Reads a gap; one number alone stands for the middle of a bracket as wide as the bench's. */
  private static Bracket gap(String text, Bracket kept) {
    String plain =
        text.replaceFirst("^over\\s+(.+)$", "$1 passes")
            .replaceFirst("^under\\s+(.+)$", "$1 lifts")
            .replaceFirst("^touches \\(no gap\\)$", "touches");
    return BracketParser.parse(plain, kept.bounded() ? kept.widthMm() : STEP_MM);
  }

  private static Value rod(String typed, String text) {
    if (text.equals("no turn")) {
      return new Value.Rod(Turn.NONE);
    }
    Matcher way = WAY.matcher(text);
    if (!way.matches()) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed.strip()) + "\" has no way; type for example loosen 3/16");
    }
    Turn size = Turn.parse(way.group(2)).size();
    return new Value.Rod(way.group(1).equals("tighten") ? size : size.opposite());
  }

  private static Value number(String typed, String text, Value kept) {
    Matcher m = NUMBER.matcher(text);
    if (!m.matches() || !(kept instanceof Value.Number number)) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed.strip()) + "\" is no number; type for example 12");
    }
    String unit = m.group(2).isEmpty() ? number.unit() : m.group(2);
    return new Value.Number(Double.parseDouble(m.group(1).replace(',', '.')), unit);
  }
}
