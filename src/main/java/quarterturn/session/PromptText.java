package quarterturn.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
 * @param first what is to be done before it, confirmed by the same answer; empty for most
 */
public record PromptText(
    String procedure,
    String step,
    String part,
    String text,
    @Nullable String why,
    List<Hazard> hazards,
    @Nullable Picture picture,
    List<String> notes,
    List<First> first) {
  public PromptText {
    hazards = List.copyOf(hazards);
    notes = List.copyOf(notes);
    first = List.copyOf(first);
  }

  /** Where nothing else is to be done before it. */
  public PromptText(
      String procedure,
      String step,
      String part,
      String text,
      @Nullable String why,
      List<Hazard> hazards,
      @Nullable Picture picture,
      List<String> notes) {
    this(procedure, step, part, text, why, hazards, picture, notes, List.of());
  }

  /**
   * Something to be done first.
   *
   * @param procedure id of the procedure it belongs to
   * @param step id of its step
   * @param stands whether what it brings about is so already, by the record
   */
  public record First(String procedure, String step, String text, boolean stands) {}

  /**
   * This text where something is to be done first: that is listed before it, and the hazards, notes
   * and reasons of both are kept, the earlier ones in front.
   *
   * @param stands whether what is to be done first is so already, by the record
   */
  PromptText after(PromptText before, boolean stands) {
    Set<Hazard> warned = new LinkedHashSet<>(before.hazards());
    warned.addAll(hazards);
    List<String> noted = new ArrayList<>(before.notes());
    noted.addAll(notes);
    List<First> done = new ArrayList<>();
    done.add(new First(before.procedure(), before.step(), before.text(), stands));
    done.addAll(first);
    List<Hazard> all = List.copyOf(warned);
    return new PromptText(procedure, step, part, text, both(before.why), all, picture, noted, done);
  }

  private @Nullable String both(@Nullable String first) {
    return first == null ? why : why == null ? first : first + "\n" + why;
  }

  /** Other words, at a step of another name. */
  public PromptText saying(String name, String words) {
    return new PromptText(procedure, name, part, words, why, hazards, picture, notes, first);
  }

  /** With more notes behind those it has. */
  public PromptText noting(List<String> more) {
    List<String> all = new ArrayList<>(notes);
    all.addAll(more);
    return new PromptText(procedure, step, part, text, why, hazards, picture, all, first);
  }
}
