package quarterturn.script;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import quarterturn.report.AsciiJson;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** The state of an unfinished session as one JSON object; a key without a value is null. */
public final class WorkJson {
  private WorkJson() {}

  /**
   * One line.
   *
   * @param place where the session is, such as "Neck relief, part 5 of 7: Turn"
   */
  public static String of(Work work, String place, Dates dates) {
    Glance glance = work.glance();
    Instant until = work.state() == Work.State.WAITS ? work.until() : null;
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("session", glance.name());
    json.put("instrument", Printable.of(glance.on()));
    json.put("ticket", work.ticket());
    json.put("by", glance.by() == null ? null : Printable.of(glance.by()));
    json.put("procedure", Printable.of(String.valueOf(glance.procedure())));
    json.put("place", Printable.of(place));
    json.put("state", work.state().word());
    json.put("words", Printable.of(work.words(dates)));
    json.put("rod_turned", glance.unread());
    json.put("until", until == null ? null : until.toString());
    json.put("ready", work.ready());
    json.put("command", "resume " + glance.name());
    return AsciiJson.of(json);
  }
}
