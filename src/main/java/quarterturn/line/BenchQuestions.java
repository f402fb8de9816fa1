package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Plan;
import quarterturn.session.Names;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;

/** What is said and asked when a bench joins a lesson. */
public final class BenchQuestions {
  private BenchQuestions() {}

  /** The benches that the plan names. */
  public static List<String> benches(Plan plan) {
    return plan.instruments().stream()
        .map(Plan.Setup::bench)
        .filter(Objects::nonNull)
        .map(String::valueOf)
        .toList();
  }

  /** The bench's name; null where the input ends or the student leaves. */
  public static @Nullable String bench(Plan plan, LineSource in, PrintWriter out)
      throws IOException, LineSource.Interrupted {
    Paper paper = new Paper(out, in);
    paper.say("Lesson: " + Printable.of(plan.title()) + ".");
    List<String> benches = benches(plan);
    paper.say(
        benches.isEmpty()
            ? "Each bench has a name of its own, for example left, or window-2."
            : "The benches are: " + String.join(", ", benches) + ".");
    while (true) {
      String typed = in.readLine("What is this bench called? > ", benches);
      if (typed == null || typed.strip().equals("quit")) {
        return null;
      }
      if (typed.isBlank()) {
        paper.say("Type a name; quit leaves.");
        continue;
      }
      try {
        String name = Names.check("a bench", typed);
        if (plan.forBench(name) != null) {
          return name;
        }
        paper.say("Choose one of: " + String.join(", ", benches) + ".");
      } catch (NotUnderstood e) {
        paper.say("Not taken: " + e.getMessage() + ".");
      }
    }
  }

  /** The first line at a bench: the lesson, and whether it goes on. */
  public static void welcome(
      Plan plan, String name, BenchLesson lesson, LineSource in, PrintWriter out) {
    new Paper(out, in).say(welcome(plan, name, lesson));
  }

  private static String welcome(Plan plan, String name, BenchLesson lesson) {
    String title = "Lesson: " + Printable.of(plan.title()) + ". Bench " + name;
    if (lesson.events() == 0) {
      String expected =
          plan.students().isEmpty()
              ? ""
              : " Expected: " + Printable.of(String.join(", ", plan.students())) + ".";
      return title + "." + expected;
    }
    String here =
        lesson.students().isEmpty()
            ? ""
            : " with " + Printable.of(String.join(", ", lesson.students()));
    return title + " goes on where it was" + here + ". (Another bench needs another name.)";
  }
}
