package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Force;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;

/**
 * What a whole set of strings pulls: the sum of their tensions. It is why a neck bends, and why a
 * set of another gauge or tuning moves it.
 *
 * @param strings bass side first, one or more
 */
public record SetPull(Scale scale, List<TunedString> strings, Temperament temperament) {
  /** A string and the note it is tuned to. */
  public record TunedString(Note note, StringGauge gauge) {
    /**
     * Reads {@code NOTE:DIAMETER} or {@code NOTE:DIAMETER:CORE}, such as {@code E1:.105in:.030in}.
     *
     * @throws NotUnderstoodException with the spellings that are understood
     */
    public static TunedString parse(String typed) {
      int colon = typed.indexOf(':');
      if (colon < 0) {
        throw new NotUnderstoodException(
            "\""
                + Printable.of(typed.strip())
                + "\" is not a string; type NOTE:DIAMETER or NOTE:DIAMETER:CORE");
      }
      return new TunedString(
          Note.parse(typed.substring(0, colon)), StringGauge.parse(typed.substring(colon + 1)));
    }
  }

  public SetPull {
    strings = List.copyOf(strings);
    if (strings.isEmpty()) {
      throw new NotUnderstoodException("a set needs one string or more");
    }
  }

  /** Tension of one string. */
  public Force of(TunedString string) {
    return Tension.of(scale, temperament.of(string.note()), string.gauge().unitWeight());
  }

  /** Tension of all strings together. */
  public Force total() {
    return Force.newtons(strings.stream().mapToDouble(s -> of(s).newtons()).sum());
  }
}
