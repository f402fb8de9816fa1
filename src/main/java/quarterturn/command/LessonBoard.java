package quarterturn.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.teacher.Board;
import quarterturn.lesson.teacher.BoardDialogue;
import quarterturn.lesson.teacher.SaddleSteps;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.LessonFormat;
import quarterturn.report.lesson.LessonSheets;
import quarterturn.report.lesson.SheetFolder;
import quarterturn.report.lesson.StepTitles;
import quarterturn.session.Names;
import quarterturn.unit.Dates;

/** {@code lesson board FOLDER}: the teacher's view of every bench. */
@Command(
    name = "board",
    description = {
      "Shows every bench of a lesson live: stops first, then who waits longest.",
      "It releases, holds, sets levels, and ends the lesson with a sheet for each student and one",
      "for the class. Nothing leaves the machine."
    })
final class LessonBoard extends Placed {
  @Parameters(paramLabel = "FOLDER", description = "The lesson's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "board",
      description =
          "The board's own name, ${DEFAULT-VALUE} without it; a second board needs another. A board"
              + " that is opened again goes on.")
  private String name = "board";

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    ZoneId zone = clock.getZone();
    Dates dates = new Dates(zone);
    String called = Names.check("a board", name);
    Set<String> saddles = SaddleSteps.of(PlanFile.in(folder), sessions());
    StepTitles titles = LessonCommand.titles(PlanFile.in(folder), sessions());
    Board.Sheets sheets =
        (plan, logs) ->
            SheetFolder.write(
                folder,
                called,
                LessonSheets.of(
                    plan, logs, saddles, titles, List.of(LessonFormat.values()), dates));
    try (Board board = Board.open(folder, called, clock, sheets);
        Face face = looks.faces(zone).open()) {
      return face.board(new BoardDialogue(board, dates));
    }
  }
}
