package quarterturn.report.lesson;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.Roster;
import quarterturn.lesson.teacher.StudentRecord;
import quarterturn.unit.Dates;

/** The sheets of a lesson: one for the class, and one for each student. */
public final class LessonSheets {
  private static final int LONGEST = 24;

  private LessonSheets() {}

  /** A file to write, whose name is valid in any folder. */
  public record File(String name, String text) {}

  /**
   * All sheets of a lesson, the class's first.
   *
   * @param logs the contents of every file at hand, of earlier lessons too
   * @param saddleSteps ids of the steps at which a saddle is set, for {@link Roster}
   * @param titles what the steps are called
   */
  public static List<File> of(
      Plan plan,
      List<WriterLog> logs,
      Set<String> saddleSteps,
      StepTitles titles,
      Collection<LessonFormat> formats,
      Dates dates) {
    return of(plan, logs, saddleSteps, titles, formats, dates, null);
  }

  /**
   * All sheets of a lesson, the class's first.
   *
   * @param logs the contents of every file at hand, of earlier lessons too
   * @param saddleSteps ids of the steps at which a saddle is set, for {@link Roster}
   * @param titles what the steps are called
   * @param necks for each real neck that stands turned its bench, how it stands and what is typed
   *     to set it back; null where the lesson had none
   */
  public static List<File> of(
      Plan plan,
      List<WriterLog> logs,
      Set<String> saddleSteps,
      StepTitles titles,
      Collection<LessonFormat> formats,
      Dates dates,
      @Nullable List<List<String>> necks) {
    List<Roster.Share> shares = Roster.of(plan, logs, saddleSteps);
    List<File> out = new ArrayList<>();
    add(
        out,
        "class",
        ClassSheet.of(plan, logs, shares, !saddleSteps.isEmpty(), titles, necks),
        formats);
    int number = 1;
    for (StudentRecord student : StudentRecord.of(plan, logs)) {
      String name = String.format(Locale.ROOT, "%02d-%s", number++, fileName(student.student()));
      add(out, name, StudentSheet.of(plan, student, shares, dates, titles), formats);
    }
    return out;
  }

  private static void add(
      List<File> out, String name, LessonPage page, Collection<LessonFormat> formats) {
    for (LessonFormat format : formats) {
      out.add(new File(name + "." + format.ending(), format.write(page)));
    }
  }

  /** A student's name reduced to characters that are valid in a file name on every system. */
  static String fileName(String student) {
    String plain =
        Normalizer.normalize(student, Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
    return cut.isEmpty() ? "student" : cut;
  }
}
