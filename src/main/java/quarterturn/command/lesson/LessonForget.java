package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.place.Place;
import quarterturn.command.place.Placed;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.Striking;
import quarterturn.lesson.teacher.SaddleSteps;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.LessonFormat;
import quarterturn.report.lesson.LessonSheets;
import quarterturn.report.lesson.SheetFolder;
import quarterturn.session.Dialogue;
import quarterturn.session.YesOrNo;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** {@code lesson forget FOLDER STUDENT}: strikes a student's name from a finished lesson. */
@Command(
    addMethodSubcommands = false,
    name = "forget",
    description = {
      "Strikes a student's name from the files and sheets of a finished lesson. It asks once.",
      "A number stands in its place, so that what was done still hangs together."
    })
final class LessonForget extends Placed {
  @Parameters(paramLabel = "FOLDER", index = "0", description = "The lesson's folder.")
  private Path folder = Path.of("");

  @Parameters(paramLabel = "STUDENT", index = "1", description = "The name, as on the sheets.")
  private String student = "";

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Place.isThere("FOLDER", folder, "name the lesson's folder");
    Striking striking = Striking.of(folder, student, clock.instant());
    YesOrNo dialogue = sure(striking);
    try (Face face = Faces.asking(false, clock.getZone())) {
      Dialogue.End end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED) {
        face.tell(dialogue.yes() ? strike(striking) : List.of("The name stays."));
      }
      return end.status();
    }
  }

  private YesOrNo sure(Striking striking) {
    String name = Printable.of(student);
    String instead =
        striking.came()
            ? "In its place stands: " + striking.shown() + "."
            : name + " was expected and never came.";
    return new YesOrNo(
        "Strike the name " + name + "?",
        List.of(
            instead + " What was done and said stays.",
            Counted.of(striking.files(), "file")
                + " and all sheets in this folder are written anew. It can't be taken back."),
        "Strike it?",
        "Keep the name",
        "Strike it");
  }

  private List<String> strike(Striking striking) throws IOException, UnreadableException {
    Map<String, List<LessonSheets.File>> sheets = new HashMap<>();
    for (Plan plan : striking.plans().values()) {
      sheets.put(plan.lesson(), sheets(plan, striking));
    }
    List<Path> unknown = new ArrayList<>();
    striking.write(() -> unknown.addAll(SheetFolder.anew(folder, sheets)));
    List<String> told = new ArrayList<>();
    told.add(
        Printable.of(student)
            + " is struck from "
            + Counted.of(striking.files(), "file")
            + (striking.came() ? "; " + striking.shown() + " stands in its place." : "."));
    unknown.forEach(sheet -> told.add("Look through " + sheet + " yourself: its lesson is gone."));
    told.add("Printed sheets, and copies elsewhere, still have the name.");
    return told;
  }

  private List<LessonSheets.File> sheets(Plan plan, Striking striking)
      throws IOException, UnreadableException {
    return LessonSheets.of(
        plan,
        striking.logs(),
        SaddleSteps.of(plan, sessions()),
        LessonCommand.titles(plan, sessions()),
        List.of(LessonFormat.values()),
        new Dates(clock.getZone()),
        LessonCommand.turned(folder, plan, striking.logs(), sessions()));
  }
}
