package quarterturn.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Picture;

/**
 * What a prompt says, in the role's wording, with every value filled in. Free of control
 * characters.
 *
 * @param procedure id of the procedure
 * @param step id of the step
 * @param part the part of the procedure it belongs to
 * @param text what to do now; paragraphs are separated by a line break
 * @param why the reason, or null
 * @param hazards hazards of this step that were accepted earlier in the session, as a reminder
 * @param picture what to draw, or null
 * @param notes what changed since the last prompt: what the neck did, what went stale
 */
public record Said(
    String procedure,
    String step,
    String part,
    String text,
    @Nullable String why,
    List<Hazard> hazards,
    @Nullable Picture picture,
    List<String> notes) {
  public Said {
    hazards = List.copyOf(hazards);
    notes = List.copyOf(notes);
  }

  /** With more notes behind those it has. */
  public Said noting(List<String> more) {
    List<String> all = new ArrayList<>(notes);
    all.addAll(more);
    return new Said(procedure, step, part, text, why, hazards, picture, all);
  }
}
