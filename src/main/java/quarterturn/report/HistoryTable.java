package quarterturn.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** A table of an instrument's sessions, one line for each. */
final class HistoryTable {
  /** Words of the quantities, besides relief, that have a column where they were read. */
  private static final List<String> MORE = List.of("action", "humidity");

  private HistoryTable() {}

  static List<String> lines(ReadingHistory history, Dates dates) {
    Map<String, Map<String, ReadingHistory.Point>> read = read(history);
    List<String> header = new ArrayList<>(List.of("Date", "Session", "Found", "Left", "Rod"));
    read.keySet().forEach(quantity -> header.add(quantity.equals("action") ? "Action" : "RH"));
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

  /** A sentence that explains the headings. */
  static String legend(ReadingHistory history) {
    Set<String> read = read(history).keySet();
    return "Found and Left: relief on the lowest string, mm. Rod: turns in all, plus is tighter."
        + (read.contains("action") ? " Action: at fret 12 on the lowest string, mm." : "")
        + (read.contains("humidity") ? " RH: relative humidity." : "");
  }

  /** The last readings of the quantities that have a column and were read, by their words. */
  private static Map<String, Map<String, ReadingHistory.Point>> read(ReadingHistory history) {
    Map<String, Map<String, ReadingHistory.Point>> read = new LinkedHashMap<>();
    for (String quantity : MORE) {
      Map<String, ReadingHistory.Point> last = history.last(quantity);
      if (!last.isEmpty()) {
        read.put(quantity, last);
      }
    }
    return read;
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
    return (net.turns() > 0 ? "+" : "-") + net.toString().replaceAll(" turns?$", "");
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
