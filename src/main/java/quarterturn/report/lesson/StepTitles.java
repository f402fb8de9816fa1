package quarterturn.report.lesson;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Which;
import quarterturn.report.Labels;

/**
 * What a sheet calls the steps of a lesson: the titles of stage and part, and what is done there.
 *
 * @param titles by procedure and step, as a spot's key has them
 */
public record StepTitles(Map<String, String> titles) {
  public StepTitles {
    titles = Map.copyOf(titles);
  }

  /** The titles of every step of the procedures in these libraries, no two of them alike. */
  public static StepTitles of(Collection<Library> libraries) {
    Map<String, String> titles = new LinkedHashMap<>();
    for (Library library : libraries) {
      for (Procedure procedure : library.procedures().values()) {
        for (Step step : procedure.steps().values()) {
          titles.putIfAbsent(
              procedure.id() + "/" + step.id(),
              unlike(title(new Labels(library, procedure), step), titles));
        }
      }
    }
    return new StepTitles(titles);
  }

  private static String title(Labels labels, Step step) {
    String part = labels.part(step.id());
    String in = part.isEmpty() ? "" : ", " + part.toLowerCase(Locale.ROOT);
    return labels.stage() + in + ": " + what(labels, step);
  }

  private static String what(Labels labels, Step step) {
    if (step instanceof Step.Measure measure) {
      return measure.quantity().said() + Which.on(measure.which(), null);
    }
    return step instanceof Step.TurnRod ? "the turn of the rod" : labels.brief(step.id());
  }

  /** A title with a number behind it, where another step has it already. */
  private static String unlike(String title, Map<String, String> others) {
    String free = title;
    for (int n = 2; others.containsValue(free); n++) {
      free = title + " (" + n + ")";
    }
    return free;
  }

  /** What is done at a step by its key, without its stage and part; other steps may do the same. */
  String what(String key) {
    String title = title(key);
    return title.substring(title.indexOf(": ") + 1).replaceFirst(" \\(\\d+\\)$", "").strip();
  }

  /** The title of a step by its key; words of the key where the files don't have it. */
  String title(String key) {
    return titles.getOrDefault(key, key.replace("/", ": ").replace('-', ' '));
  }
}
