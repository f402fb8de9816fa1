package quarterturn.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Known;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Carried;
import quarterturn.session.listing.Calibration;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** An instrument's history as text: a table, plots over time, and how its neck answers the rod. */
public final class HistoryReport {
  private static final String MARKS =
      "Marks: o read, on the lowest string or in the room; x on another string. Between two gauges"
          + " every line it may lie on is marked. v: no gap, or less than this. ^: more than this."
          + " On the time axis T: rod tightened, L: loosened, *: both.";

  private HistoryReport() {}

  /**
   * The whole report as lines of text, no plot wider than 78 columns.
   *
   * @param stops why the rod is not turned, until a repairer's finding is on record
   * @param window the relief window, or null where there is none
   * @param known how the neck answers the rod, or null where the kind is unknown
   * @param came how often this neck did what was expected
   * @param all the same of all necks
   */
  public static List<String> lines(
      ReadingHistory history,
      List<Carried.Stop> stops,
      @Nullable Window window,
      @Nullable Known known,
      Calibration came,
      Calibration all,
      Dates dates) {
    List<String> lines = new ArrayList<>();
    lines.add("History of " + history.instrument());
    lines.add("");
    for (Carried.Stop stop : stops) {
      String text = dates.minute(stop.at()) + ": " + stop.why() + " " + Carried.Stop.HOLDS;
      lines.addAll(Paragraph.wrap(text, TimePlot.COLUMNS, 0));
      lines.add("");
    }
    if (history.visits().isEmpty()) {
      lines.add("No session yet.");
      return lines;
    }
    Map<String, List<ReadingHistory.Point>> compared = history.compared();
    List<String> table = HistoryTable.lines(history, compared, dates);
    lines.addAll(table);
    lines.add("");
    lines.addAll(Paragraph.wrap(HistoryTable.legend(table.get(0)), TimePlot.COLUMNS, 0));
    lines.addAll(plots(history, compared, window, dates));
    if (known != null) {
      lines.add("");
      lines.addAll(Paragraph.wrap(NeckWords.of(known, history.moves()), TimePlot.COLUMNS, 0));
    }
    lines.add("");
    lines.addAll(Paragraph.wrap(came(came, all), TimePlot.COLUMNS, 0));
    return lines;
  }

  private static String came(Calibration here, Calibration all) {
    if (all.turns() == 0) {
      return "How often the expected came true is not known yet: no turn was read before and after.";
    }
    return "What was expected came true "
        + (here.turns() == 0 ? "" : here.share() + " on this neck, ")
        + all.share()
        + " on all necks here (nine in ten expected). It came true where the middle of the reading"
        + " after a turn lay in the range expected before it; turns without both readings are left"
        + " out, and those whose expected range is not on record.";
  }

  /** The unfinished sessions, as home and {@code due} tell of them, under a blank line. */
  public static List<String> open(List<Work> open, Dates dates) {
    List<String> lines = new ArrayList<>(open.isEmpty() ? List.of() : List.of(""));
    for (Work work : open) {
      String text = "Open: " + work.glance().name() + ": " + work.words(dates) + ".";
      lines.addAll(Paragraph.wrap(text, TimePlot.COLUMNS, 0));
    }
    return lines;
  }

  private static List<String> plots(
      ReadingHistory history,
      Map<String, List<ReadingHistory.Point>> compared,
      @Nullable Window window,
      Dates dates) {
    List<String> lines = new ArrayList<>();
    Instant from = Instant.MAX;
    Instant to = Instant.MIN;
    for (Instant at : ends(history)) {
      from = at.isBefore(from) ? at : from;
      to = at.isAfter(to) ? at : to;
    }
    for (Map.Entry<String, List<ReadingHistory.Point>> entry : compared.entrySet()) {
      String quantity = entry.getKey();
      List<ReadingHistory.Point> points = entry.getValue();
      Window own = quantity.equals(Quantity.RELIEF.word()) ? window : null;
      lines.add("");
      lines.add(title(quantity, points.get(0).unit(), own));
      lines.addAll(new TimePlot(points, own, from, to).lines(history.moves(), dates));
    }
    if (!lines.isEmpty()) {
      lines.add("");
      String marks = window == null ? MARKS : MARKS + " On the left #: in range.";
      lines.addAll(Paragraph.wrap(marks, TimePlot.COLUMNS, 0));
    }
    return lines;
  }

  /** The times of the first and the last reading and turn. */
  private static List<Instant> ends(ReadingHistory history) {
    List<Instant> ends = new ArrayList<>();
    List<ReadingHistory.Point> points = history.points();
    if (!points.isEmpty()) {
      ends.add(points.get(0).at());
      ends.add(points.get(points.size() - 1).at());
    }
    List<ReadingHistory.Move> moves = history.moves();
    if (!moves.isEmpty()) {
      ends.add(moves.get(0).at());
      ends.add(moves.get(moves.size() - 1).at());
    }
    return ends;
  }

  private static String title(String quantity, String unit, @Nullable Window window) {
    String name = Character.toUpperCase(quantity.charAt(0)) + quantity.substring(1);
    String string = quantity.equals(Quantity.RELIEF.word()) ? " on the lowest string" : "";
    return name + string + ", " + unit + (window == null ? "" : "; range " + window);
  }
}
