package quarterturn.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Results;
import quarterturn.session.Event;
import quarterturn.session.listing.Glance;
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

    /**
     * A session's row.
     *
     * @param rod what was done to the rod, in the words of {@link #rod}
     * @param open how it stands where it is not over
     */
    public static Row of(Glance glance, String rod, String open) {
      String instrument = glance.instrument() != null ? glance.instrument() : glance.kind();
      String notice = glance.notice() == null ? "" : " (" + glance.notice() + ")";
      return new Row(
          glance.name(),
          glance.started(),
          glance.procedure() == null || glance.started() == null ? "-" : glance.procedure(),
          instrument == null ? "-" : instrument,
          rod,
          state(glance, open) + notice);
    }

    private static String state(Glance glance, String open) {
      Event.Ended ended = glance.ended();
      if (ended != null) {
        return (ended.handOver() ? "handed over: " : "ended: ") + InWindow.shown(ended.outcome());
      }
      return glance.discarded() != null
          ? "discarded: " + glance.standing()
          : glance.unfinished() ? "open: " + open : "open";
    }
  }

  /** "not turned", "1/8 turn tighter than as found". */
  public static String rod(Glance.Rod rod) {
    return rod.moves() == 0 ? "not turned" : TurnWords.net(rod.net(), rod.sure());
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
