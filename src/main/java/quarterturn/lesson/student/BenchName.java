package quarterturn.lesson.student;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.Dialogue;
import quarterturn.session.Names;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks what a bench that joins a lesson is called, until the name is free, and opens its file. */
public final class BenchName implements Dialogue, Closeable {
  private final Plan plan;
  private final Path folder;
  private final List<String> students;
  private @Nullable WriterFile file;
  private String called = "";

  /** Why the name that was given can't be had, or empty. */
  private String taken = "";

  /** A name whose students the person was told of, and may mean all the same; or empty. */
  private String shared = "";

  /**
   * A dialogue that asks for the name where none is given, or one that is taken.
   *
   * @param students who are about to sit down
   * @throws NotUnderstoodException for a given name that is none, or that the plan leaves out
   */
  public BenchName(Plan plan, Path folder, List<String> students, @Nullable String given)
      throws IOException {
    this.plan = plan;
    this.folder = folder;
    this.students = students;
    if (given != null) {
      String name = checked(given);
      try {
        open(name);
      } catch (NotUnderstoodException e) {
        taken = String.valueOf(e.getMessage());
      }
    }
  }

  private String checked(String typed) {
    String checked = Names.check("a bench", typed);
    setup(plan, checked);
    return checked;
  }

  /** Opens a bench's file where it is nobody else's. */
  private void open(String name) throws IOException {
    WriterFile opened;
    try {
      opened = WriterFile.of(folder, plan.lesson(), name, WriterLog.Part.BENCH);
    } catch (WriterFile.InUse e) {
      throw new NotUnderstoodException(
          "Bench " + name + " is open in another window. Type another name.");
    }
    BenchLesson lesson = BenchLesson.of(name, plan.level(), opened.found().events());
    boolean others =
        !students.isEmpty()
            && !lesson.students().isEmpty()
            && Collections.disjoint(lesson.levels().keySet(), students);
    if (others && !name.equals(shared)) {
      opened.close();
      shared = name;
      throw new NotUnderstoodException(
          "Bench "
              + name
              + " has students already: "
              + String.join(", ", lesson.students())
              + ". Type another name. To join them, type "
              + name
              + " once more.");
    }
    file = opened;
    called = name;
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

  /** The name; empty where none was given. */
  public String name() {
    return called;
  }

  /** The file of the bench, to be closed with it; null where no name was given. */
  public @Nullable WriterFile file() {
    WriterFile opened = file;
    file = null;
    return opened;
  }

  @Override
  public @Nullable Question question() {
    if (file != null) {
      return null;
    }
    List<String> benches = benches(plan);
    String choice =
        benches.isEmpty()
            ? "Each bench has a name of its own, for example left, or window-2."
            : "The benches are: " + String.join(", ", benches) + ".";
    return new Question.Words(
        taken.isEmpty() ? "" : "A name is taken",
        taken.isEmpty() ? List.of("Lesson: " + plan.title() + ".", choice) : List.of(taken, choice),
        "What is this bench called?",
        "Type a name; quit leaves.");
  }

  @Override
  public Taken take(String text) throws IOException {
    if (text.isBlank()) {
      throw new NotUnderstoodException("Type a name; quit leaves.");
    }
    open(checked(text.strip()));
    return Taken.SILENTLY;
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
    }
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
