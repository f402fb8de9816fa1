package quarterturn.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Picture;

/**
 * The text of a prompt, in the role's wording, with every value filled in and without control
 * characters.
 *
 * @param procedure id of the procedure
 * @param step id of the step
 * @param part the part of the procedure that the step belongs to
 * @param text what to do now; paragraphs are separated by a line break
 * @param why the reason for the step, or null
 * @param hazards hazards of this step that were accepted earlier in the session
 * @param picture the picture to draw, or null
 * @param notes changes since the last prompt: how the neck answered, which results went stale
 * @param first instructions to carry out first, confirmed by the same answer; empty for most
 *     prompts
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

  /** A text without instructions to carry out first. */
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
   * An instruction to carry out first.
   *
   * @param procedure id of the step's procedure
   * @param step id of the step
   * @param stands whether the instruction's effect is already on record
   */
  public record First(String procedure, String step, String text, boolean stands) {}

  /** This text with another instruction of the same step before it. */
  public PromptText leading(String instruction) {
    List<First> done = new ArrayList<>(first);
    done.add(new First(procedure, step, instruction, true));
    return new PromptText(procedure, step, part, text, why, hazards, picture, notes, done);
  }

  /**
   * This text with another instruction before it; hazards, notes and reasons of both are kept, the
   * instruction's first.
   *
   * @param stands whether the instruction's effect is already on record
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

  /** This text without what is to be done before. */
  public PromptText alone() {
    return new PromptText(procedure, step, part, text, why, hazards, picture, notes);
  }

  private @Nullable String both(@Nullable String first) {
    return first == null ? why : why == null ? first : first + "\n" + why;
  }

  /** This text with other words, as of a step with another name. */
  public PromptText saying(String name, String words) {
    return new PromptText(procedure, name, part, words, why, hazards, picture, notes, first);
  }

  /** This text with more notes after its own. */
  public PromptText noting(List<String> more) {
    List<String> all = new ArrayList<>(notes);
    all.addAll(more);
    return new PromptText(procedure, step, part, text, why, hazards, picture, all, first);
  }
}
