package quarterturn.unit;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A note of the twelve-tone scale by its number, where A4 is 69 and every semitone counts one. Two
 * notes are equal where their numbers are, however they were spelled.
 *
 * <p>{@link #parse} takes a letter, up to two sharps or flats, and the octave: {@code E1}, {@code
 * F#2}, {@code Bb0}. The octave changes at C, so that B0 is a semitone below C1 (scientific pitch
 * notation).
 */
public final class Note {
  private static final int LOWEST = 0;
  private static final int HIGHEST = 127;
  private static final List<String> NAMES =
      List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");
  private static final Pattern TYPED = Pattern.compile("([a-g])([#♯]{0,2}|[b♭]{0,2})(-1|[0-9])");

  private final int number;
  private final String name;

  /** A note by its number, with black keys as sharps. */
  public Note(int number) {
    this(number, sharp(number));
  }

  private Note(int number, String name) {
    if (number < LOWEST || number > HIGHEST) {
      throw new NotUnderstoodException(
          "a note must lie between " + sharp(LOWEST) + " and " + sharp(HIGHEST));
    }
    this.number = number;
    this.name = name;
  }

  /**
   * Reads a typed note, which keeps its spelling.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Note parse(String typed) {
    Matcher m = TYPED.matcher(Digits.plain(typed));
    if (!m.matches()) {
      throw Typed.no(typed, "a note with its octave", "E1, F#2 or Bb0");
    }
    String letter = m.group(1).toUpperCase(Locale.ROOT);
    String shifts = m.group(2).replace('♯', '#').replace('♭', 'b');
    int shift = shifts.startsWith("#") ? shifts.length() : -shifts.length();
    int octave = Integer.parseInt(m.group(3));
    return new Note(
        12 * (octave + 1) + NAMES.indexOf(letter) + shift, letter + shifts + m.group(3));
  }

  public int number() {
    return number;
  }

  private static String sharp(int number) {
    return NAMES.get(Math.floorMod(number, 12)) + (Math.floorDiv(number, 12) - 1);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Note note && note.number == number;
  }

  @Override
  public int hashCode() {
    return number;
  }

  /** The note's name as it was typed, "Bb0", else "E1", "F#2", with black keys as sharps. */
  @Override
  public String toString() {
    return name;
  }
}
