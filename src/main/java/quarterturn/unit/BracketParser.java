package quarterturn.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a typed gauge reading into a {@link Bracket}.
 *
 * <ul>
 *   <li>{@code 0.30 passes 0.35 lifts}, either half alone, and {@code p}/{@code l} for short
 *   <li>{@code 0.30..0.35}, {@code 0.30-0.35} or {@code 0.30 to 0.35}
 *   <li>{@code 0.30}: the leaf just drags; the gauge's step is put around it
 *   <li>{@code touches}: no gap at all
 *   <li>{@code card}: a bank card in place of a leaf, in any of these
 *   <li>inches and thousandths: {@code .012 in passes .014 in lifts}, {@code 12..14 thou}; a unit
 *       that stands once holds for both numbers
 * </ul>
 */
public final class BracketParser {
  /**
   * A bank card's thickness with its limits: ISO/IEC 7810 ID-1, 0.76 mm plus or minus 0.08 mm. A
   * card that passes proves only the lower limit; one that lifts, only the upper.
   */
  public static final Bracket CARD = new Bracket(0.68, 0.84);

  /** Most characters of a reading. */
  private static final int LONGEST = 100;

  private static final String SIZE =
      "(card|[-+]?(?:\\d+\\s*/\\s*\\d+|\\d*[.,]?\\d+)\\s*(?:mm|inches|inch|in|\"|''|″|thou|mil)?)";
  private static final String WORD = "(passes|pass|p|goes|lifts|lift|l|stops)";

  /**
   * Matches leaves parted by a comma, but not one that begins a number: "0,30 passes ,35 lifts".
   */
  private static final Pattern GAUGED =
      Pattern.compile(SIZE + "\\s*" + WORD + "\\b(?:[\\s;]|,(?!\\d+\\s*(?:mm)?\\s*" + WORD + "))*");

  private static final Pattern RANGE = Pattern.compile(SIZE + "\\s*(?:\\.\\.|to|-|–)\\s*" + SIZE);
  private static final Pattern UNIT = Pattern.compile("(mm|inches|inch|in|\"|''|″|thou|mil)\\s*$");

  private BracketParser() {}

  /**
   * Reads {@code typed}.
   *
   * @param stepMm the gauge's step, put around a single number
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Bracket parse(String typed, double stepMm) {
    String text = Digits.unended(Digits.plain(typed));
    // A bare fraction is a turn, or lacks its inch sign: no gauge is a fraction of a millimetre.
    if (text.matches("\\d+ ?/ ?\\d+")) {
      throw no(typed);
    }
    if (text.length() > LONGEST) {
      throw no(text.substring(0, 20) + "...");
    }
    if (text.matches("touch(es|ing)?|t|no gap|rests|none")) {
      return Bracket.touches();
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return between(range.group(1), range.group(2));
    }
    if (text.matches(SIZE)) {
      return text.equals("card") ? CARD : around(text, stepMm);
    }
    return gauged(typed, text);
  }

  private static Bracket around(String text, double stepMm) {
    double mm = notNegative(Length.parse(text).mm());
    return mm == 0 ? Bracket.touches() : new Bracket(Math.max(0, mm - stepMm / 2), mm + stepMm / 2);
  }

  private static Bracket gauged(String typed, String text) {
    List<String> passes = new ArrayList<>();
    List<String> lifts = new ArrayList<>();
    Matcher m = GAUGED.matcher(text);
    int end = 0;
    while (end < text.length() && m.find(end) && m.start() == end) {
      boolean lifting = m.group(2).startsWith("l") || m.group(2).equals("stops");
      (lifting ? lifts : passes).add(m.group(1));
      end = m.end();
    }
    if (end < text.length() || passes.size() > 1 || lifts.size() > 1 || text.isEmpty()) {
      throw no(typed);
    }
    if (passes.isEmpty()) {
      return Bracket.lifts(high(lifts.get(0)));
    }
    if (lifts.isEmpty()) {
      return Bracket.passes(low(passes.get(0)));
    }
    return between(passes.get(0), lifts.get(0));
  }

  /**
   * The bracket between two leaves. One leaf can't both pass and lift, so equal sizes are refused.
   */
  private static Bracket between(String passes, String lifts) {
    double low = low(withUnit(passes, unitOf(lifts)));
    double high = high(withUnit(lifts, unitOf(passes)));
    if (low >= high) {
      throw new NotUnderstoodException(
          "the gauge that passes must be thinner than the one that pushes the string up");
    }
    return new Bracket(low, high);
  }

  private static double low(String size) {
    return notNegative(size.equals("card") ? CARD.lowMm() : Length.parse(size).mm());
  }

  private static double high(String size) {
    return notNegative(size.equals("card") ? CARD.highMm() : Length.parse(size).mm());
  }

  private static double notNegative(double mm) {
    if (mm < 0) {
      throw new NotUnderstoodException(
          "a gap cannot be negative; if the string rests, type touches");
    }
    return mm;
  }

  /**
   * A size with the other one's unit where it has none: in "12..14 thou" and "12 thou to 14" the
   * unit holds for both.
   */
  private static String withUnit(String size, String unit) {
    return size.equals("card") || !unitOf(size).isEmpty() ? size : size + " " + unit;
  }

  private static String unitOf(String size) {
    Matcher m = UNIT.matcher(size);
    return m.find() ? m.group(1) : "";
  }

  private static NotUnderstoodException no(String typed) {
    return new NotUnderstoodException(
        "\""
            + Printable.of(typed)
            + "\" is not a reading; type for example: 0.30 passes 0.35 lifts, or 0.30..0.35, or"
            + " 0.30, or touches");
  }
}
