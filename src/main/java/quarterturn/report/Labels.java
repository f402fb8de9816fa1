package quarterturn.report;

import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.session.engine.EngineQuestions;

/**
 * Words for the ids in a record. An id that the files no longer have is shown as words, since a
 * record outlives the procedure it was made with.
 */
public record Labels(@Nullable Library library, @Nullable Procedure procedure) {
  private static final Pattern BLANK = Pattern.compile("\\{[^}]*\\}");

  /** Labels that know no id. */
  public static Labels none() {
    return new Labels(null, null);
  }

  /** Labels with the words of {@code procedure}, if the library has it. */
  public static Labels of(Library library, String procedure) {
    return new Labels(library, library.procedures().get(procedure));
  }

  /** The first sentence of what a step asks; where it is not known, the words of its id. */
  public String step(String id) {
    String own = EngineQuestions.title(id);
    Step step = find(id);
    if (own != null || step == null) {
      return own != null ? own : words(id);
    }
    String text = step.words().text();
    String brief = step.words().brief();
    String fits = text.contains("{") && brief != null ? brief : text;
    String first = filled(fits.split("\\R|(?<=[.?!])\\s", 2)[0].strip());
    return first.isEmpty() ? words(id) : first;
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

  /** The question that a step ends with; where it asks none, its first sentence. */
  public String asked(String id) {
    Step step = find(id);
    String text = step == null ? "" : step.words().text().replaceAll("\\s+", " ");
    String[] sentences = text.split("(?<=[.?!])\\s");
    String last = sentences[sentences.length - 1].strip();
    return last.endsWith("?") ? filled(last) : step(id);
  }

  /** The shortest text for what a step asks. */
  public String brief(String id) {
    Step step = find(id);
    String brief = step == null ? null : step.words().brief();
    return brief == null ? step(id) : filled(brief);
  }

  /** A text whose blanks are left open, since what was filled in is not on record. */
  private static String filled(String text) {
    return BLANK.matcher(text).replaceAll("...").replaceAll("[.:]$", "");
  }

  /** An id that the files no longer have, as people read it. */
  private static String words(String id) {
    return id.replace('-', ' ');
  }

  /** The title of the procedure, or empty where it is not known. */
  public String stage() {
    return procedure == null ? "" : procedure.title();
  }

  /** The title of the part of the procedure that a step belongs to, or empty. */
  public String part(String id) {
    Step step = procedure == null ? null : procedure.steps().get(id);
    return step == null ? "" : step.words().part();
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

  /** An option's label, or the words of its id. */
  public String option(String stepId, String id) {
    Step step = find(stepId);
    if (step instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (option.id().equals(id)) {
          return BLANK.matcher(option.label()).replaceAll("...");
        }
      }
    }
    return words(id);
  }

  /** A hazard with its signal word first, or the words of its id. */
  public String hazard(String id) {
    Hazard hazard = library == null ? null : library.hazards().get(id);
    return hazard == null ? words(id) : hazard.word() + ": " + hazard.harm();
  }
}
