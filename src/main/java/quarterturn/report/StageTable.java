package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.session.Stage;
import quarterturn.unit.Dates;

/** A table of the results of a set-up: fresh, stale with the reason, out of window, or not done. */
public final class StageTable {
  private StageTable() {}

  /** The table as lines, with the shortest way to make every result fresh. */
  public static List<String> lines(List<Stage> stages, Dates dates) {
    List<List<String>> rows = new ArrayList<>();
    List<String> way = new ArrayList<>();
    for (Stage stage : stages) {
      String since = stage.since() == null ? "" : dates.minute(stage.since());
      String because = stage.because() == null ? "" : stage.because();
      rows.add(List.of(stage.name(), stage.status().words(), since, because));
      boolean due = stage.status() == Stage.Status.STALE;
      if (due && stage.by() != null && !way.contains(stage.by())) {
        way.add(stage.by());
      }
    }
    List<String> lines =
        new ArrayList<>(Table.lines(List.of("Result", "State", "Since", "Because"), rows));
    for (Stage stage : stages) {
      if (!stage.reading().isEmpty()) {
        lines.add(stage.name() + ": " + stage.reading());
      }
    }
    if (!way.isEmpty()) {
      lines.add("The shortest way to fresh: " + String.join(", then ", way) + ".");
    }
    return lines;
  }
}
