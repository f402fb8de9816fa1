package quarterturn.lesson.student;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Plan;
import quarterturn.session.Dialogue;
import quarterturn.session.Names;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks what a bench that joins a lesson is called. */
public final class BenchName implements Dialogue {
  private final Plan plan;
  private @Nullable String name;

  /**
   * A dialogue that asks for the name only where none is given.
   *
   * @throws NotUnderstoodException for a given name that is none, or that the plan leaves out
   */
  public BenchName(Plan plan, @Nullable String given) {
    this.plan = plan;
    this.name = given == null ? null : checked(given);
  }

  private String checked(String typed) {
    String checked = Names.check("a bench", typed);
    setup(plan, checked);
    return checked;
  }

  /**
   * The instrument that the bench of this name works on.
   *
   * @throws NotUnderstoodException naming the benches there are
   */
  public static Plan.Setup setup(Plan plan, String bench) {
    Plan.Setup setup = plan.forBench(bench);
    if (setup == null) {
      throw new NotUnderstoodException(
          "the plan has no instrument for a bench called "
              + bench
              + "; choose from "
              + String.join(", ", benches(plan)));
    }
    return setup;
  }

  private static List<String> benches(Plan plan) {
    return plan.instruments().stream()
        .map(Plan.Setup::bench)
        .filter(Objects::nonNull)
        .map(String::valueOf)
        .toList();
  }

  /** The name, or null where none was given. */
  public @Nullable String name() {
    return name;
  }

  @Override
  public @Nullable Question question() {
    List<String> benches = benches(plan);
    String choice =
        benches.isEmpty()
            ? "Each bench has a name of its own, for example left, or window-2."
            : "The benches are: " + String.join(", ", benches) + ".";
    return name != null
        ? null
        : new Question.Words(
            "",
            List.of("Lesson: " + plan.title() + ".", choice),
            "What is this bench called?",
            "Type a name; quit leaves.");
  }

  @Override
  public Taken take(String text) {
    if (text.isBlank()) {
      throw new NotUnderstoodException("Type a name; quit leaves.");
    }
    name = checked(text);
    return Taken.SILENTLY;
  }

  /** The first line at a bench: the lesson, and whether it goes on. */
  public static String welcome(Plan plan, String name, BenchLesson lesson) {
    String title = "Lesson: " + plan.title() + ". Bench " + name;
    if (lesson.events() == 0) {
      String expected = String.join(", ", plan.students());
      return title + "." + (expected.isEmpty() ? "" : " Expected: " + expected + ".");
    }
    String here =
        lesson.students().isEmpty() ? "" : " with " + String.join(", ", lesson.students());
    return title + " goes on where it was" + here + ". (Another bench needs another name.)";
  }
}
