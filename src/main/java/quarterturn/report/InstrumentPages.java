package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** The table of instruments and the page of one, as text. */
public final class InstrumentPages {
  private InstrumentPages() {}

  /**
   * One instrument's row in the table.
   *
   * @param kind the kind's name
   * @param sessions how many sessions it had
   * @param last the newest session's state, or "-"
   */
  public record Row(String name, String kind, int sessions, String last) {
    /** The row for an instrument with these sessions, oldest first. */
    public static Row of(String name, String kind, List<SessionList.Row> sessions) {
      String last = sessions.isEmpty() ? "-" : sessions.get(sessions.size() - 1).state();
      return new Row(name, kind, sessions.size(), last);
    }

    /** This row with the state of another session. */
    public Row standing(String state) {
      return new Row(name, kind, sessions, state);
    }
  }

  /** The table of instruments, or one line that says there is none. */
  public static List<String> list(List<Row> rows) {
    if (rows.isEmpty()) {
      return List.of("No instrument yet.");
    }
    return Table.lines(
        List.of("Name", "Kind", "Sessions", "Last session"),
        rows.stream()
            .map(r -> List.of(r.name(), r.kind(), Integer.toString(r.sessions()), r.last()))
            .toList());
  }

  /**
   * The page of one instrument, as lines of text.
   *
   * @param facts labels and values in the order they are printed; a value may have several lines
   * @param sessions its sessions, oldest first
   */
  public static List<String> show(
      Map<String, String> facts, List<SessionList.Row> sessions, Dates dates) {
    int widest = facts.keySet().stream().mapToInt(Table::columns).max().orElse(0);
    List<String> lines = new ArrayList<>();
    facts.forEach(
        (label, value) -> {
          String before = label + ": " + " ".repeat(widest - Table.columns(label));
          for (String line : value.split("\\R", -1)) {
            lines.add(Printable.of(before + line).stripTrailing());
            before = " ".repeat(widest + 2);
          }
        });
    lines.add("");
    lines.addAll(SessionList.lines(sessions, dates));
    return lines;
  }
}
