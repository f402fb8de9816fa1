package quarterturn.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** A table of an instrument's sessions, one line for each. */
final class HistoryTable {
  /** Words of the quantities, besides relief, that have a column where they were read. */
  private static final List<String> MORE = List.of("action", "humidity");

  private static final String ACTION = "Action";
  private static final String HUMIDITY = "RH";

  private HistoryTable() {}

  /**
   * The table.
   *
   * @param compared the history's readings that can be compared, by their quantities' words
   */
  static List<String> lines(
      ReadingHistory history, Map<String, List<ReadingHistory.Point>> compared, Dates dates) {
    Map<String, Map<String, ReadingHistory.Point>> read = new LinkedHashMap<>();
    for (String quantity : MORE) {
      List<ReadingHistory.Point> points = compared.getOrDefault(quantity, List.of());
      Map<String, ReadingHistory.Point> last = last(points);
      if (!last.isEmpty()) {
        read.put(quantity, last);
      }
    }
    List<String> header = new ArrayList<>(List.of("Date", "Session", "Found", "Left", "Rod"));
    read.keySet().forEach(quantity -> header.add(quantity.equals(MORE.get(0)) ? ACTION : HUMIDITY));
    List<List<String>> rows = new ArrayList<>();
    for (ReadingHistory.Visit visit : history.visits()) {
      List<String> row = new ArrayList<>();
      row.add(dates.day(visit.began()));
      row.add(visit.session());
      row.add(gap(visit.asFound()));
      row.add(gap(visit.asLeft()));
      row.add(visit.moves() == 0 ? "-" : net(visit));
      for (Map<String, ReadingHistory.Point> last : read.values()) {
        ReadingHistory.Point point = last.get(visit.session());
        row.add(point == null ? "-" : value(point));
      }
      rows.add(row);
    }
    return Table.lines(header, rows);
  }

  /** The last reading in each session, on the lowest string or on none, by the session's name. */
  private static Map<String, ReadingHistory.Point> last(List<ReadingHistory.Point> points) {
    Map<String, ReadingHistory.Point> last = new HashMap<>();
    for (ReadingHistory.Point point : points) {
      if (point.lowest()) {
        last.put(point.session(), point);
      }
    }
    return last;
  }

  /** A sentence that explains the headings of a table. */
  static String legend(String header) {
    return "Found and Left: relief on the lowest string, mm. Rod: turns in all, plus is tighter."
        + (header.contains(ACTION) ? " Action: at fret 12 on the lowest string, mm." : "")
        + (header.contains(HUMIDITY) ? " RH: relative humidity." : "");
  }

  /** A bracket without its unit: "0.30-0.35", "touches", "over 1.00". */
  private static String gap(@Nullable Bracket bracket) {
    return bracket == null
        ? "-"
        : bracket.toString().replace(" mm", "").replace(" (no gap)", "").replace(" to ", "-");
  }

  /** A net rod turn, plus for tighter: "+1/8", "about -3/16, not sure", "0". */
  private static String net(ReadingHistory.Visit visit) {
    return visit.sure() ? net(visit.net()) : "about " + net(visit.net()) + ", not sure";
  }

  private static String net(Turn net) {
    if (net.size().turns() < 0.001) {
      return "0";
    }
    String amount = net.toString();
    return (net.turns() > 0 ? "+" : "-") + amount.substring(0, amount.lastIndexOf(' '));
  }

  private static String value(ReadingHistory.Point point) {
    if (point.unit().equals("%")) {
      return Decimals.print(point.low(), 0) + " %";
    }
    return point.low() == point.high()
        ? Decimals.print(point.low(), 2)
        : gap(new Bracket(point.low(), point.high()));
  }
}
