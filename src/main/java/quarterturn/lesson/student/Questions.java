package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Questioning;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/** The questions of a library's procedures: which belong to a step, and what answers them. */
final class Questions {
  private Questions() {}

  /** The questions of a step, and those that its result answers. */
  static List<LessonQuestion> at(Library library, String procedure, String step) {
    Procedure of = library.procedures().get(procedure);
    return of == null
        ? List.of()
        : of.steps().values().stream()
            .flatMap(
                s ->
                    s.words().ask().stream()
                        .filter(ask -> step.equals(ask.about() == null ? s.id() : ask.about())))
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
        .orElse(question.equals(Questioning.WAY.question()) ? Questioning.WAY : null);
  }

  private static Stream<LessonQuestion> of(Procedure procedure) {
    List<LessonQuestion> all = new ArrayList<>();
    for (Step step : procedure.steps().values()) {
      all.addAll(step.words().ask());
    }
    return all.stream();
  }

  /** The answers to choose from, the right one and the wrong ideas, always in the same order. */
  static List<String> options(LessonQuestion ask) {
    List<String> out = new ArrayList<>();
    out.add(right(ask));
    ask.ideas().forEach(idea -> out.add(idea.idea()));
    Collections.rotate(out, ask.question().length());
    return out;
  }

  /** The gist of the right answer, so that its length does not give it away. */
  static String right(LessonQuestion ask) {
    String answer = ask.answer() == null ? "" : ask.answer();
    String[] sentences = answer.split("(?<=[.?!]) ");
    boolean bare = sentences.length > 1 && !sentences[0].contains(" ");
    return bare ? sentences[0] + " " + sentences[1] : sentences[0];
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
