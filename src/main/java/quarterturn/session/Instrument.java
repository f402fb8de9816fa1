package quarterturn.session;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Style;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;

/**
 * One instrument of the user's.
 *
 * @param name as typed, kept in small letters; also its file's name
 * @param kind id of its kind
 * @param style how it is played, or null where that is asked each time
 * @param jointFret its own joint fret, 1 to 36, or null for the kind's
 * @param strings a note on the strings that are on, or null
 * @param created when it was added
 */
public record Instrument(
    String name,
    String kind,
    @Nullable Style style,
    @Nullable Integer jointFret,
    @Nullable String strings,
    Instant created) {
  private static final int LAST_FRET = 36;
  private static final int LONGEST_NOTE = 200;

  public Instrument {
    name = Names.check("an instrument", name);
    kind = Names.check("a kind of instrument", kind);
    if (jointFret != null && (jointFret < 1 || jointFret > LAST_FRET)) {
      throw new NotUnderstood(
          "the joint fret lies between 1 and " + LAST_FRET + ", not " + jointFret);
    }
    if (strings != null
        && (strings.length() > LONGEST_NOTE || !strings.equals(Printable.of(strings)))) {
      throw new NotUnderstood(
          "the note on the strings must be one line of at most " + LONGEST_NOTE + " characters");
    }
  }
}
