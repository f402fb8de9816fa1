package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Place;
import quarterturn.command.place.Placed;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.teacher.Desk;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.lesson.teacher.SaddleSteps;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.LessonFormat;
import quarterturn.report.lesson.LessonSheets;
import quarterturn.report.lesson.SheetFolder;
import quarterturn.report.lesson.StepTitles;
import quarterturn.session.Names;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** {@code lesson desk FOLDER}: the teacher's view of every bench. */
@Command(
    addMethodSubcommands = false,
    name = "desk",
    aliases = "board",
    description = {
      "Shows every bench of a lesson live: stops first, then who waits longest.",
      "It releases, holds, sets levels, and ends the lesson with a sheet for each student and one",
      "for the class. Nothing leaves the machine."
    })
final class LessonDesk extends Placed {
  @Parameters(paramLabel = "FOLDER", description = "The lesson's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description =
          "The desk's own name, \"desk\" without it; a second desk needs another. A desk that is"
              + " opened again goes on.")
  private String name = "";

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Place.isThere("FOLDER", folder, "name the lesson's folder");
    ZoneId zone = clock.getZone();
    Dates dates = new Dates(zone);
    String called = Names.check("a desk", name.isEmpty() ? named(folder) : name);
    Set<String> saddles = SaddleSteps.of(PlanFile.in(folder), sessions());
    StepTitles titles = LessonCommand.titles(PlanFile.in(folder), sessions());
    Desk.Sheets sheets =
        (plan, logs) ->
            SheetFolder.write(
                folder,
                called,
                LessonSheets.of(
                    plan,
                    logs,
                    saddles,
                    titles,
                    List.of(LessonFormat.values()),
                    dates,
                    LessonCommand.turned(folder, plan, logs, sessions())));
    Faces faces = looks.faces(zone);
    int status;
    boolean ended;
    try (Desk desk = Desk.open(folder, called, clock, sheets, titles.titles());
        Face face = faces.open()) {
      status = face.desk(new DeskDialogue(desk));
      ended = desk.sight().ended();
    }
    if (ended && faces.kind() != Faces.Kind.SCRIPT) {
      print(toSetBack());
    }
    return status;
  }

  /** What is typed to set the real necks back that the lesson has turned. */
  private List<String> toSetBack() throws IOException, UnreadableException {
    Plan plan = PlanFile.in(folder);
    List<List<String>> necks =
        LessonCommand.turned(folder, plan, LessonFolder.read(folder).logs(), sessions());
    List<String> lines = new ArrayList<>();
    for (List<String> neck : necks == null ? List.<List<String>>of() : necks) {
      lines.add("Set back " + Printable.of(neck.get(0)) + " (" + neck.get(1) + "): " + neck.get(2));
    }
    return lines;
  }

  /** What a desk is called that nobody named: as earlier versions called it where they began it. */
  private static String named(Path folder) {
    return Files.exists(folder.resolve("board.jsonl")) ? "board" : "desk";
  }
}
