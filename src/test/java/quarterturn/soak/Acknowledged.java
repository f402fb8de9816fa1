package quarterturn.soak;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * What is asked before an answer, by which it is known afterwards that the answer, once it was
 * acknowledged, is on record.
 *
 * @param step the step that is asked about, or the empty text where nothing is known of it
 */
record Acknowledged(Face face, String step, int length, Records before) {
  /** Between these two a typed session is open. */
  private static final String OPENED = "Type ? to hear what can be typed";

  private static final String HOME = "one safe turn at a time";

  /** Of which nothing is kept. */
  private static final String REHEARSAL = "A rehearsal on a simulated neck";

  private static final String TAKEN = "Taken: ";

  static Acknowledged of(Face face, String out, Records before) {
    String step = "";
    if (face == Face.LINES) {
      JsonNode last = LinesPlayer.last(out);
      step = last.has("outcome") ? "" : last.path("step").asText("");
    } else if (face != Face.SCREEN && out.lastIndexOf(OPENED) > out.lastIndexOf(HOME)) {
      step = TAKEN;
    }
    if (out.contains(REHEARSAL)) {
      step = "";
    }
    return new Acknowledged(face, step, out.length(), before);
  }

  /** Whether what was printed since acknowledges the answer. */
  boolean looksUp(String out) {
    String more = out.substring(Math.min(length, out.length()));
    return !step.isEmpty()
        && (face == Face.LINES
            ? more.startsWith("{\"prompt\":") && more.endsWith("\n")
            : more.contains(TAKEN));
  }

  /** What is not on record though it was acknowledged. */
  List<String> missing(String out, Records now) {
    if (!looksUp(out)) {
      return List.of();
    }
    String since = now.since(before);
    boolean there = face == Face.LINES ? since.contains("\"event\"") : !since.isEmpty();
    return there ? List.of() : List.of("acknowledged and not on record: " + step);
  }
}
