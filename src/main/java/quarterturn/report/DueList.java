package quarterturn.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import quarterturn.session.Due;

/** What is due, as a table and as JSON. */
public final class DueList {
  private DueList() {}

  /** The table, or one line that says there is none. */
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
    StringWriter text = new StringWriter();
    JsonFactory plain = JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
    try (JsonGenerator json = plain.createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("now", now.toString());
      json.writeArrayFieldStart("due");
      for (Due due : dues) {
        json.writeStartObject();
        json.writeStringField("uid", DueCalendar.uid(due));
        json.writeStringField("at", due.at().toString());
        json.writeBooleanField("overdue", due.come(now));
        json.writeStringField("why", due.why().word());
        json.writeStringField("instrument", due.instrument());
        json.writeStringField("procedure", due.procedure());
        json.writeStringField("session", due.session());
        json.writeStringField("what", due.what());
        json.writeStringField("command", due.command());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a string can't fail to be written to", e);
    }
    return text.toString();
  }
}
