package quarterturn.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Results;
import quarterturn.session.Event;
import quarterturn.unit.Dates;

/** The table of sessions. */
public final class SessionList {
  private SessionList() {}

  /**
   * One session's row in the table.
   *
   * @param began null where its first line can't be read
   */
  public record Row(
      String session,
      @Nullable Instant began,
      String procedure,
      String instrument,
      String rod,
      String state) {

    /** The row for a session with these events. */
    public static Row of(String session, List<Event> events) {
      Summary summary = Summary.of(events);
      String rod =
          summary.moves() == 0 ? "not turned" : TurnWords.net(summary.net(), summary.sure());
      if (!events.isEmpty() && events.get(0) instanceof Event.Started started) {
        String instrument =
            started.instrument() != null
                ? started.instrument()
                : started.kind() != null ? started.kind() : "-";
        return new Row(
            session, started.at(), started.procedure(), instrument, rod, state(summary, events));
      }
      return new Row(session, null, "-", "-", rod, state(summary, events));
    }

    private static String state(Summary summary, List<Event> events) {
      if (summary.ended() != null) {
        return (summary.ended().handOver() ? "handed over: " : "ended: ")
            + InWindow.shown(summary.ended().outcome());
      }
      if (!events.isEmpty() && events.get(events.size() - 1) instanceof Event.Discarded discarded) {
        return "discarded: " + discarded.standing();
      }
      if (!events.isEmpty() && events.get(events.size() - 1) instanceof Event.Left left) {
        return "open: " + left.standing();
      }
      return "open";
    }
  }

  /** A sentence for each session, or one that says there is none. */
  public static List<String> sentences(List<Row> rows, Results results, Dates dates) {
    if (rows.isEmpty()) {
      return List.of("No session yet.");
    }
    return rows.stream()
        .map(
            r ->
                (r.began() == null ? "" : dates.minute(r.began()) + ", ")
                    + results.title(r.procedure())
                    + " on "
                    + r.instrument()
                    + ": "
                    + r.state()
                    + ". Rod: "
                    + r.rod()
                    + ".")
        .toList();
  }

  /** The table, or one line that says there is none. */
  public static List<String> lines(List<Row> rows, Dates dates) {
    if (rows.isEmpty()) {
      return List.of("No session yet.");
    }
    return Table.lines(
        List.of("Session", "Began", "Procedure", "Instrument", "Rod", "State"),
        rows.stream()
            .map(
                r ->
                    List.of(
                        r.session(),
                        r.began() == null ? "-" : dates.minute(r.began()),
                        r.procedure(),
                        r.instrument(),
                        r.rod(),
                        r.state()))
            .toList());
  }
}
