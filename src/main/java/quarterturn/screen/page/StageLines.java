package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Stage;
import quarterturn.unit.Dates;

/** Lines for every result of the set-up: its state and the reason for it. */
final class StageLines {
  private static final int NAME = 16;

  private StageLines() {}

  static List<Line> of(List<Stage> stages, ZoneId zone, int width) {
    if (stages.isEmpty()) {
      return List.of(Line.heading("Nothing is known of any result yet."));
    }
    Dates dates = new Dates(zone);
    List<Line> out = new ArrayList<>();
    for (Stage stage : stages) {
      String mark = stage.status() == Stage.Status.FRESH ? "√" : "·";
      String name = " ".repeat(Math.max(1, NAME - stage.name().length()));
      out.addAll(
          Line.wrapped(
              mark + " " + stage.name() + name, Ink.PLAIN, words(stage, dates), Ink.STRONG, width));
      if (!stage.reading().isEmpty()) {
        out.addAll(Line.wrapped(" ".repeat(NAME + 2), stage.reading(), width));
      }
    }
    return out;
  }

  private static String words(Stage stage, Dates dates) {
    String since = stage.since() == null ? "" : ", " + dates.minute(stage.since());
    String because = stage.because() == null ? "" : ": " + stage.because();
    return stage.status().words() + because + since;
  }
}
