package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.place.Export;
import quarterturn.command.place.Place;
import quarterturn.command.place.Placed;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.teacher.SaddleSteps;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.LessonFormat;
import quarterturn.report.lesson.LessonSheets;
import quarterturn.report.lesson.SheetFolder;
import quarterturn.unit.Dates;

/** {@code lesson sheets FOLDER}: a sheet for each student, and one for the class. */
@Command(
    addMethodSubcommands = false,
    name = "sheets",
    description = {
      "Writes a sheet for each student and one for the class, as a lesson stands. No grades.",
      "Without --out it prints them, the class's first. Nothing leaves the machine."
    })
final class LessonSheetsCommand extends Placed {
  @Parameters(paramLabel = "FOLDER", description = "The lesson's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, markdown, html or csv. Printed: text. With --out: all of them.")
  private @Nullable LessonFormat format;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The folder to write into; what is there is never written over.")
  private @Nullable Path out;

  @Override
  public Integer call() throws IOException, UnreadableException {
    Place.isThere("FOLDER", folder, "name the lesson's folder");
    if (out != null) {
      Export.checkFolder("--out", out, where.kept());
    }
    Plan plan = PlanFile.in(folder);
    LessonFolder.Contents contents = LessonFolder.read(folder);
    contents.notices().forEach(this::notice);
    contents.notRead().forEach(this::notice);
    List<LessonFormat> formats =
        format != null
            ? List.of(format)
            : out == null ? List.of(LessonFormat.TEXT) : List.of(LessonFormat.values());
    List<LessonSheets.File> files =
        LessonSheets.of(
            plan,
            contents.logs(),
            SaddleSteps.of(plan, sessions()),
            LessonCommand.titles(plan, sessions()),
            formats,
            new Dates(clock.getZone()),
            LessonCommand.turned(folder, plan, contents.logs(), sessions()));
    if (out != null) {
      try {
        SheetFolder.into(out, files);
      } catch (FileSystemException e) {
        throw Place.unwritable("--out", out, "folder", e);
      }
      return print(List.of("The sheets are in " + out + "."));
    }
    for (LessonSheets.File file : files) {
      // By way of the shell they become files: UTF-8, whatever the terminal speaks.
      System.out.writeBytes((file.text() + "\n").getBytes(StandardCharsets.UTF_8));
    }
    System.out.flush();
    return 0;
  }
}
