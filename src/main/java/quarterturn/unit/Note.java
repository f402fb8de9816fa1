package quarterturn.unit;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note of the twelve-tone scale by its number, where A4 is 69 and every semitone counts one.
 *
 * <p>{@link #parse} takes a letter, up to two sharps or flats, and the octave: {@code E1}, {@code
 * F#2}, {@code Bb0}. The octave changes at C, so that B0 is a semitone below C1 (scientific pitch
 * notation).
 */
public record Note(int number) {
  private static final int LOWEST = 0;
  private static final int HIGHEST = 127;
  private static final List<String> NAMES =
      List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");
  private static final Pattern TYPED = Pattern.compile("([a-g])([#♯]{0,2}|[b♭]{0,2})(-1|[0-9])");

  public Note {
    if (number < LOWEST || number > HIGHEST) {
      throw new NotUnderstoodException(
          "a note must lie between " + name(LOWEST) + " and " + name(HIGHEST));
    }
  }

  /**
   * Reads a typed note.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Note parse(String typed) {
    Matcher m = TYPED.matcher(typed.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw Typed.no(typed, "a note with its octave", "E1, F#2 or Bb0");
    }
    int letter = NAMES.indexOf(m.group(1).toUpperCase(Locale.ROOT));
    String shifts = m.group(2);
    int shift =
        shifts.startsWith("#") || shifts.startsWith("♯") ? shifts.length() : -shifts.length();
    return new Note(12 * (Integer.parseInt(m.group(3)) + 1) + letter + shift);
  }

  private static String name(int number) {
    return NAMES.get(Math.floorMod(number, 12)) + (Math.floorDiv(number, 12) - 1);
  }

  /** The note's name, "E1", "F#2", with black keys as sharps. */
  @Override
  public String toString() {
    return name(number);
  }
}
