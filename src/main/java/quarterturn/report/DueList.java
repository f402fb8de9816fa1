package quarterturn.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import quarterturn.session.Due;
import quarterturn.unit.Dates;

/** A list of what is due, as a table and as JSON. */
public final class DueList {
  private DueList() {}

  /** The table as lines, or one line that says nothing is due. */
  public static List<String> lines(List<Due> dues, Instant now, Dates dates) {
    if (dues.isEmpty()) {
      return List.of("Nothing is due.");
    }
    return Table.lines(
        List.of("When", "Instrument", "What", "What to type"),
        dues.stream()
            .map(
                d ->
                    List.of(
                        dates.toOrFrom(now, d.at()),
                        d.instrument(),
                        d.what(),
                        DueCalendar.typed(d)))
            .toList());
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
