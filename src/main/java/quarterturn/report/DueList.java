package quarterturn.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.condition.Quote;
import quarterturn.session.Due;
import quarterturn.session.Program;
import quarterturn.unit.Dates;

/** A list of what is due, as lines and as JSON. */
public final class DueList {
  private static final int WIDTH = 80;

  private DueList() {}

  /**
   * Lines that say of each item when, where and what, and what to type on a line of its own, which
   * is never broken; or one line that says nothing is due.
   *
   * @param tickets of the instruments that have one, by their names
   * @param program how the program is called
   */
  public static List<String> lines(
      List<Due> dues, Map<String, String> tickets, Instant now, Dates dates, Program program) {
    if (dues.isEmpty()) {
      return List.of("Nothing is due.");
    }
    List<String> lines = new ArrayList<>();
    for (Due due : dues) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      String when = Quote.sentence(dates.toOrFrom(now, due.at()));
      String ticket = tickets.get(due.instrument());
      String on = due.instrument() + (ticket == null ? "" : ", ticket " + ticket);
      lines.addAll(Paragraph.wrap(when + ", " + on + ": " + due.what(), WIDTH, 0));
      lines.add("  " + program.typed(due.command()));
    }
    return lines;
  }

  /** One JSON object on one line: {@code now} and the list {@code due}, the soonest first. */
  public static String json(List<Due> dues, Instant now) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("now", now.toString());
    ArrayNode list = out.putArray("due");
    for (Due due : dues) {
      list.addObject()
          .put("uid", DueCalendar.uid(due))
          .put("at", due.at().toString())
          .put("overdue", due.come(now))
          .put("why", due.why().word())
          .put("instrument", due.instrument())
          .put("procedure", due.procedure())
          .put("session", due.session())
          .put("what", due.what())
          .put("command", due.command());
    }
    return AsciiJson.of(out);
  }
}
