package quarterturn.report.sheet;

import static quarterturn.unit.Decimals.twelveDigits;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.report.AsciiJson;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * A sheet as one JSON object. Every key is always there, null where nothing is known; {@code by}
 * and {@code play_test} alone are left out where nobody said. Instants are ISO 8601 in UTC, turns
 * are plus for tightening, lengths are millimetres, intervals cents.
 */
final class SheetJson {
  private SheetJson() {}

  static String of(Sheet sheet) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    heading(out, sheet.heading());
    out.put("complaint", sheet.complaint());
    each(out, "notes", sheet.notes(), SheetJson::remark);
    each(out, "strings", sheet.strings(), SheetJson::remark);
    each(out, "findings", sheet.findings(), SheetJson::remark);
    each(out, "results", sheet.rows(), SheetJson::row);
    Sheet.Played played = sheet.played();
    if (played != null) {
      ObjectNode one = out.putObject("play_test");
      one.put("as_found", played.found()).put("as_left", played.left());
    }
    rod(out.putObject("rod"), sheet.rod());
    each(out, "settings", sheet.settings(), SheetJson::setting);
    each(out, "waits", sheet.waits(), SheetJson::wait);
    each(out, "hazards", sheet.hazards(), SheetJson::remark);
    each(out, "readings", sheet.readings(), SheetJson::taken);
    ArrayNode open = out.putArray("open");
    sheet.open().forEach(open::add);
    outcome(out, sheet);
    each(out, "next", sheet.next(), (n, a) -> n.put("at", time(a.at())).put("what", a.what()));
    ArrayNode limits = out.putArray("limits");
    Sheet.LIMITS.forEach(limits::add);
    return AsciiJson.of(out) + "\n";
  }

  private static <T> void each(
      ObjectNode out, String name, List<T> all, BiConsumer<ObjectNode, T> fields) {
    ArrayNode list = out.putArray(name);
    all.forEach(one -> fields.accept(list.addObject(), one));
  }

  private static void heading(ObjectNode out, Sheet.Heading heading) {
    out.put("session", heading.session()).put("instrument", heading.instrument());
    out.put("kind", heading.kind());
    out.put("style", heading.style() == null ? null : heading.style().word());
    out.put("role", heading.role() == null ? null : heading.role().word());
    if (heading.by() != null) {
      out.put("by", heading.by());
    }
    out.put("ticket", heading.ticket()).put("bench_minutes", heading.minutes());
    out.put("procedure", heading.procedure());
    out.put("began", time(heading.began())).put("ended", time(heading.ended()));
  }

  private static @Nullable String time(@Nullable Instant at) {
    return at == null ? null : at.toString();
  }

  private static void remark(ObjectNode one, Sheet.Remark remark) {
    one.put("at", time(remark.at())).put("about", remark.about()).put("text", remark.text());
  }

  private static void row(ObjectNode one, Sheet.Row row) {
    one.put("quantity", row.quantity().word()).put("unit", row.quantity().unit());
    one.put("string", row.string()).put("convention", row.convention());
    window(one, row.window());
    one.put("window_source", row.source());
    if (row.found() == null) {
      one.putNull("as_found");
    } else {
      taken(one.putObject("as_found"), row.found());
    }
    taken(one.putObject("as_left"), row.left());
  }

  private static void taken(ObjectNode one, Sheet.Taken taken) {
    Event.Read read = taken.read();
    Bracket bracket = read.bracket();
    one.put("at", time(read.at())).put("quantity", read.quantity().word());
    one.put("string", SheetRows.string(read)).put("unit", read.quantity().unit());
    one.put("low", bracket == null ? null : twelveDigits(bracket.lowMm()));
    one.put("high", bracket == null ? null : twelveDigits(bracket.highMm()));
    one.put("value", read.value() == null ? null : twelveDigits(read.value()));
    ArrayNode held = one.putArray("held");
    read.held().forEach(held::add);
    one.put("read_at", read.readAt()).put("gauge_step", twelveDigits(read.gaugeStep()));
    one.put("stage", taken.taken().stage()).put("part_of_stage", taken.taken().part());
    one.put("part", taken.part().words());
    window(one, taken.window());
    one.put("stands", taken.verdict() == null ? null : ReadingWords.stands(taken));
    one.put("spoiled_by", taken.spoiled());
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
    each(out, "moves", rod.moves(), SheetJson::move);
  }

  private static void move(ObjectNode one, Sheet.Move move) {
    one.put("at", time(move.at())).put("turn", twelveDigits(move.turn().turns()));
    one.put("feel", move.feel() == null ? null : move.feel().word()).put("sure", move.sure());
  }

  private static void setting(ObjectNode one, Event.Adjusted set) {
    one.put("at", time(set.at())).put("change", set.change()).put("string", set.string());
    one.put("amount_mm", twelveDigits(set.amount()));
  }

  private static void wait(ObjectNode one, Sheet.Pause wait) {
    one.put("step", wait.step()).put("stage", wait.taken().stage());
    one.put("part_of_stage", wait.taken().part()).put("needed", wait.needed());
    one.put("began", time(wait.began()));
    one.put("until", time(wait.until())).put("ended", time(wait.ended()));
    one.put("skipped", wait.skipped()).put("reason", wait.reason());
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
