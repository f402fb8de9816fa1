package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/** The questions of a library's procedures: which belong to a step, and what answers them. */
final class Questions {
  private Questions() {}

  /**
   * The questions of a step, and those that its result answers: those not asked yet come first, and
   * of these the ones for afterwards.
   */
  static List<LessonQuestion> at(
      Library library, String procedure, String step, Set<String> asked) {
    Procedure of = library.procedures().get(procedure);
    if (of == null) {
      return List.of();
    }
    Comparator<LessonQuestion> fresh = Comparator.comparing(ask -> asked.contains(ask.question()));
    return of.steps().values().stream()
        .flatMap(
            s ->
                s.words().ask().stream()
                    .filter(ask -> step.equals(ask.about() == null ? s.id() : ask.about())))
        .sorted(fresh.thenComparing(ask -> ask.kind() == LessonQuestion.Kind.PREDICT))
        .toList();
  }

  /**
   * The question of this text as its procedure has it, or null where no procedure has it any more.
   */
  static @Nullable LessonQuestion named(List<Library> libraries, String question) {
    return libraries.stream()
        .flatMap(library -> library.procedures().values().stream())
        .flatMap(Questions::of)
        .filter(ask -> ask.question().equals(question))
        .findFirst()
        .orElse(null);
  }

  private static Stream<LessonQuestion> of(Procedure procedure) {
    List<LessonQuestion> all = new ArrayList<>();
    for (Step step : procedure.steps().values()) {
      all.addAll(step.words().ask());
    }
    return all.stream();
  }

  /** The answer key of a question, to be told when all have answered it. */
  static List<String> key(LessonQuestion ask) {
    List<String> out = new ArrayList<>();
    if (ask.answer() != null) {
      out.add("A good answer: " + ask.answer());
    }
    for (LessonQuestion.Idea idea : ask.ideas()) {
      out.add("Often thought: " + idea.idea() + " But: " + idea.because());
    }
    return out;
  }
}
