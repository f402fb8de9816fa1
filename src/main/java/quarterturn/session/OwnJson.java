package quarterturn.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quarterturn.craft.Window;
import quarterturn.procedure.Aim;

/** An instrument's own facts in a journal. */
final class OwnJson {
  private OwnJson() {}

  static void write(ObjectNode out, Event.Own own) {
    if (own.scaleMm() != null) {
      out.put("scale-mm", own.scaleMm());
    }
    ArrayNode tuning = out.putArray("tuning");
    own.tuning().forEach(tuning::add);
    ArrayNode gauges = out.putArray("gauges-mm");
    own.gaugesMm().forEach(gauges::add);
    if (own.radiusMm() != null) {
      out.put("radius-mm", own.radiusMm());
    }
    out.put("fixed-saddles", own.fixedSaddles());
    ArrayNode windows = out.putArray("windows");
    for (Aim aim : Aim.values()) {
      Window window = own.windows().get(aim);
      if (window != null) {
        windows
            .addObject()
            .put("aim", aim.word())
            .put("low", window.lowMm())
            .put("high", window.highMm());
      }
    }
  }

  static Event.Own read(JsonNode node) throws NotAnEvent {
    Fields f = new Fields(node);
    List<Double> gauges = new ArrayList<>();
    for (JsonNode gauge : f.list("gauges-mm")) {
      gauges.add(gauge.doubleValue());
    }
    Map<Aim, Window> windows = new EnumMap<>(Aim.class);
    for (JsonNode item : f.list("windows")) {
      Fields w = new Fields(item);
      windows.put(
          w.word("aim", Aim.values(), Aim::word), new Window(w.number("low"), w.number("high")));
      w.nothingElse();
    }
    Event.Own own =
        new Event.Own(
            f.numberOrNull("scale-mm"),
            f.texts("tuning"),
            gauges,
            f.numberOrNull("radius-mm"),
            f.yesOrNo("fixed-saddles"),
            windows);
    f.nothingElse();
    return own;
  }
}
