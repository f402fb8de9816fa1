package quarterturn.report.sheet;

import static quarterturn.unit.Decimals.twelveDigits;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.report.AsciiJson;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * A sheet as one JSON object. Its keys are always there, null where nothing is known; instants are
 * ISO 8601 in UTC, turns plus where they tighten, lengths millimetres, intervals cents.
 */
final class SheetJson {
  private SheetJson() {}

  static String of(Sheet sheet) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    heading(out, sheet.heading());
    out.put("complaint", sheet.complaint());
    remarks(out.putArray("notes"), sheet.notes());
    remarks(out.putArray("strings"), sheet.strings());
    remarks(out.putArray("findings"), sheet.findings());
    rows(out.putArray("results"), sheet.rows());
    rod(out.putObject("rod"), sheet.rod());
    settings(out.putArray("settings"), sheet.settings());
    waits(out.putArray("waits"), sheet.waits());
    remarks(out.putArray("hazards"), sheet.hazards());
    ArrayNode readings = out.putArray("readings");
    sheet.readings().forEach(taken -> readings.add(taken(taken)));
    ArrayNode open = out.putArray("open");
    sheet.open().forEach(open::add);
    outcome(out, sheet);
    ArrayNode next = out.putArray("next");
    sheet.next().forEach(n -> next.addObject().put("at", n.at().toString()).put("what", n.what()));
    ArrayNode limits = out.putArray("limits");
    Sheet.LIMITS.forEach(limits::add);
    return AsciiJson.of(out) + "\n";
  }

  private static void heading(ObjectNode out, Sheet.Heading heading) {
    out.put("session", heading.session()).put("instrument", heading.instrument());
    out.put("kind", heading.kind());
    out.put("style", heading.style() == null ? null : heading.style().word());
    out.put("role", heading.role() == null ? null : heading.role().word());
    out.put("procedure", heading.procedure());
    out.put("began", time(heading.began())).put("ended", time(heading.ended()));
  }

  private static @Nullable String time(@Nullable Instant at) {
    return at == null ? null : at.toString();
  }

  private static void remarks(ArrayNode out, List<Sheet.Remark> remarks) {
    for (Sheet.Remark remark : remarks) {
      ObjectNode one = out.addObject();
      one.put("at", remark.at().toString()).put("about", remark.about()).put("text", remark.text());
    }
  }

  private static void rows(ArrayNode out, List<Sheet.Row> rows) {
    for (Sheet.Row row : rows) {
      ObjectNode one = out.addObject();
      one.put("quantity", row.quantity().word()).put("unit", row.quantity().unit());
      one.put("string", row.string()).put("convention", row.convention());
      window(one, row.window());
      one.put("window_source", row.source());
      one.set("as_found", row.found() == null ? null : taken(row.found()));
      one.set("as_left", taken(row.left()));
    }
  }

  private static ObjectNode taken(Sheet.Taken taken) {
    Event.Read read = taken.read();
    Bracket bracket = read.bracket();
    ObjectNode one = JsonNodeFactory.instance.objectNode();
    one.put("at", read.at().toString()).put("quantity", read.quantity().word());
    one.put("string", SheetRows.string(read)).put("unit", read.quantity().unit());
    one.put("low", bracket == null ? null : twelveDigits(bracket.lowMm()));
    one.put("high", bracket == null ? null : twelveDigits(bracket.highMm()));
    one.put("value", read.value() == null ? null : twelveDigits(read.value()));
    ArrayNode held = one.putArray("held");
    read.held().forEach(held::add);
    one.put("read_at", read.readAt()).put("gauge_step", twelveDigits(read.gaugeStep()));
    one.put("part", taken.part().words());
    window(one, taken.window());
    one.put("stands", taken.verdict() == null ? null : ReadingWords.stands(taken));
    one.put("spoiled_by", taken.spoiled());
    return one;
  }

  private static void window(ObjectNode out, @Nullable Window window) {
    if (window == null) {
      out.putNull("window");
    } else {
      out.putArray("window").add(twelveDigits(window.lowMm())).add(twelveDigits(window.highMm()));
    }
  }

  private static void rod(ObjectNode out, Sheet.Rod rod) {
    out.put("net", twelveDigits(rod.net().turns())).put("total", twelveDigits(rod.total().turns()));
    ArrayNode moves = out.putArray("moves");
    for (Sheet.Move move : rod.moves()) {
      ObjectNode one = moves.addObject();
      one.put("at", move.at().toString()).put("turn", twelveDigits(move.turn().turns()));
      one.put("feel", move.feel() == null ? null : move.feel().word()).put("sure", move.sure());
    }
  }

  private static void settings(ArrayNode out, List<Event.Adjusted> settings) {
    for (Event.Adjusted set : settings) {
      ObjectNode one = out.addObject();
      one.put("at", set.at().toString()).put("change", set.change()).put("string", set.string());
      one.put("amount_mm", twelveDigits(set.amount()));
    }
  }

  private static void waits(ArrayNode out, List<Sheet.Pause> waits) {
    for (Sheet.Pause wait : waits) {
      ObjectNode one = out.addObject();
      one.put("step", wait.step()).put("began", wait.began().toString());
      one.put("until", wait.until().toString()).put("ended", time(wait.ended()));
      one.put("skipped", wait.skipped()).put("reason", wait.reason());
    }
  }

  private static void outcome(ObjectNode out, Sheet sheet) {
    Event.Ended ended = sheet.ended();
    if (ended == null) {
      out.putNull("outcome");
    } else {
      ObjectNode one = out.putObject("outcome");
      one.put("hand_over", ended.handOver())
          .put("outcome", ended.outcome())
          .put("why", ended.why());
    }
    out.put("standing", sheet.standing());
  }
}
