package quarterturn.report;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.session.engine.EngineQuestions;

/**
 * Words for the ids in a record. An id that the files no longer have is shown as it is, since a
 * record outlives the procedure it was made with.
 */
public record Labels(@Nullable Library library, @Nullable Procedure procedure) {
  /** Labels that show every id as it is. */
  public static Labels none() {
    return new Labels(null, null);
  }

  /** Labels with the words of {@code procedure}, if the library has it. */
  public static Labels of(Library library, String procedure) {
    return new Labels(library, library.procedures().get(procedure));
  }

  /** The first sentence of what a step asks, or its id as words. */
  public String step(String id) {
    String own = EngineQuestions.title(id);
    Step step = find(id);
    if (own != null || step == null || step.words().text().contains("{")) {
      return own != null ? own : id.replace('-', ' ');
    }
    String first = step.words().text().split("\\R|(?<=[.?!])\\s", 2)[0].strip();
    return first.isEmpty() ? id.replace('-', ' ') : first.replaceAll("[.:]$", "");
  }

  /** The step of an id, in the procedure itself or in one that it calls; or null. */
  private @Nullable Step find(String id) {
    Step step = procedure == null ? null : procedure.steps().get(id);
    if (step != null || library == null || procedure == null) {
      return step;
    }
    return library.procedures().values().stream()
        .map(called -> called.steps().get(id))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** The shortest text for what a step asks. */
  public String brief(String id) {
    Step step = find(id);
    String brief = step == null ? null : step.words().brief();
    return brief == null || brief.contains("{") ? step(id) : brief.replaceAll("[.:]$", "");
  }

  /** The fact that the program records from a step's answer, or null. */
  public @Nullable Recorded records(String id) {
    Step step = procedure == null ? null : procedure.steps().get(id);
    return step == null ? null : step.records();
  }

  /** Whether a step's answer is a verdict that is a result by itself. */
  public boolean gives(String id) {
    Step step = procedure == null ? null : procedure.steps().get(id);
    return step instanceof Step.Choose choose && choose.gives() != null;
  }

  /** An option's label, or its id. */
  public String option(String stepId, String id) {
    Step step = find(stepId);
    if (step instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (option.id().equals(id)) {
          return option.label();
        }
      }
    }
    return id;
  }

  /** A hazard with its signal word first, or its id. */
  public String hazard(String id) {
    Hazard hazard = library == null ? null : library.hazards().get(id);
    return hazard == null ? id : hazard.word() + ": " + hazard.harm();
  }
}
