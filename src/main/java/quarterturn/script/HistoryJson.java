package quarterturn.script;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.Known;
import quarterturn.report.ReadingHistory;
import quarterturn.session.listing.Calibration;
import quarterturn.unit.Bracket;

/**
 * An instrument's history as one JSON object. Brackets are two bounds in millimetres, null for one
 * that is open; turns count tightening as plus.
 */
public final class HistoryJson {
  private HistoryJson() {}

  /**
   * The history as one JSON object in one line.
   *
   * @param known how the neck answers its rod, or null where the kind is unknown
   * @param came how often this neck did what was expected
   * @param all the same of all necks
   */
  public static String of(
      ReadingHistory history, @Nullable Known known, Calibration came, Calibration all) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("instrument", history.instrument());
    ArrayNode sessions = json.putArray("sessions");
    for (ReadingHistory.Visit visit : history.visits()) {
      ObjectNode one = sessions.addObject();
      one.put("session", visit.session());
      one.put("began", visit.began().toString());
      bracket(one, "found_mm", visit.asFound());
      bracket(one, "left_mm", visit.asLeft());
      one.put("net_turns", visit.net().turns());
      one.put("moves", visit.moves());
    }
    ArrayNode readings = json.putArray("readings");
    history.points().forEach(point -> readings.add(reading(point)));
    ArrayNode turns = json.putArray("turns");
    for (ReadingHistory.Move move : history.moves()) {
      turns.addObject().put("at", move.at().toString()).put("turned", move.turn().turns());
    }
    if (known == null) {
      json.putNull("known");
    } else {
      json.set("known", AdviceLines.known(known));
    }
    share(json.putObject("expected_came_true"), came);
    share(json.putObject("expected_came_true_on_all"), all);
    return json.toString();
  }

  private static void share(ObjectNode json, Calibration calibration) {
    json.put("times", calibration.right()).put("of", calibration.turns());
  }

  private static ObjectNode reading(ReadingHistory.Point point) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("at", point.at().toString());
    json.put("session", point.session());
    json.put("quantity", point.quantity());
    json.put("unit", point.unit());
    json.put("lowest", point.lowest());
    if (point.string() != null) {
      json.put("string", point.string());
    }
    if (point.readAt() != 0) {
      json.put("read_at", point.readAt());
    }
    if (point.low() == point.high()) {
      json.put("value", point.low());
    } else {
      bounds(json.putArray("between"), point.low(), point.high());
    }
    return json;
  }

  private static void bracket(ObjectNode json, String name, @Nullable Bracket bracket) {
    if (bracket == null) {
      json.putNull(name);
    } else {
      bounds(json.putArray(name), bracket.lowMm(), bracket.highMm());
    }
  }

  private static void bounds(ArrayNode json, double low, double high) {
    json.add(Double.isFinite(low) ? JsonNodeFactory.instance.numberNode(low) : json.nullNode());
    json.add(Double.isFinite(high) ? JsonNodeFactory.instance.numberNode(high) : json.nullNode());
  }
}
