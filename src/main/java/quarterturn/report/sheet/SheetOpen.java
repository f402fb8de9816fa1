package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Step;
import quarterturn.session.Event;

/** Finds the work that is still to be done after a session. */
final class SheetOpen {
  private SheetOpen() {}

  static List<String> points(
      List<Sheet.Row> rows, List<Sheet.Move> moves, Event.@Nullable Ended ended) {
    List<String> points = new ArrayList<>();
    if (ended == null) {
      points.add("The work is not finished.");
    } else if (ended.handOver() || ended.why().contains(Step.End.REPAIRER)) {
      points.add("For a qualified repairer: " + reason(ended));
    }
    for (Sheet.Row row : rows) {
      String point = point(row);
      if (point != null) {
        points.add(point);
      }
    }
    if (moves.stream().anyMatch(move -> !move.sure())) {
      points.add(
          "After a break it was not sure how far the rod had been turned; where it stands from as"
              + " found is not sure either.");
    }
    return points;
  }

  private static String reason(Event.Ended ended) {
    return ended.why().isBlank() ? InWindow.shown(ended.outcome()) : ended.why();
  }

  private static @Nullable String point(Sheet.Row row) {
    String what =
        ReadingWords.name(row.quantity()) + (row.string().isEmpty() ? "" : " on " + row.string());
    Sheet.Taken left = row.left();
    if (left.spoiled() != null) {
      return what
          + ": the last reading, "
          + ReadingWords.withUnit(left.read())
          + ", is stale ("
          + left.spoiled()
          + "); read it again.";
    }
    if (left.window() == null || !ReadingWords.out(left)) {
      return null;
    }
    return what
        + ": "
        + ReadingWords.withUnit(left.read())
        + " is out of its range, "
        + ReadingWords.window(row.quantity(), left.window())
        + ".";
  }
}
