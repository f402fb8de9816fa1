package quarterturn.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import quarterturn.report.TrailLine;
import quarterturn.report.TurnWords;
import quarterturn.session.Overview;

/** The readings and turns of a session so far, in typed lines. */
final class RecordLines {
  private RecordLines() {}

  /**
   * The lines.
   *
   * @param all whether also readings of other quantities than relief
   */
  static List<String> of(Overview overview, boolean all) {
    String trail = TrailLine.of(overview.trail());
    List<String> lines = new ArrayList<>();
    lines.add("Record: " + (trail.isEmpty() ? "no reading and no turn yet" : trail));
    if (all && !overview.others().isEmpty()) {
      lines.add(
          "Read besides: "
              + overview.others().stream()
                  .map(other -> other.words() + (other.stale() ? " (stale)" : ""))
                  .collect(Collectors.joining("; "))
              + ".");
    }
    lines.add("Rod: " + TurnWords.net(overview.net(), Overview.Entry.sure(overview.trail())) + ".");
    lines.add(
        overview.window() == null ? "Range: not set yet." : "Range: " + overview.window() + ".");
    return lines;
  }
}
