package quarterturn.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Role;
import quarterturn.procedure.Style;
import quarterturn.procedure.Which;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * An event as one JSON object: {@code at} and {@code event} first, then its own fields. Enums stand
 * as their words, instants as ISO 8601, turns as numbers, brackets as two bounds in millimetres
 * with null for an open one. A field that is null in the event is left out.
 */
public final class EventJson {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Map<Class<? extends Event>, String> NAME_OF =
      Event.NAMES.entrySet().stream()
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getValue, Map.Entry::getKey));

  private EventJson() {}

  /** The event's name in a journal. */
  public static String nameOf(Event event) {
    String name = NAME_OF.get(event.getClass());
    if (name == null) {
      throw new IllegalStateException("no name for " + event.getClass());
    }
    return name;
  }

  /** The event as a JSON object. */
  public static ObjectNode write(Event event) {
    ObjectNode out = JSON.objectNode();
    out.put("at", event.at().toString()).put("event", nameOf(event));
    if (event instanceof Event.Started e) {
      started(out, e);
    } else if (event instanceof Event.Accepted e) {
      out.put("step", e.step()).put("hazard", e.hazard());
    } else if (event instanceof Event.Told e) {
      out.put("step", e.step());
      known(out, "changes", e.changes());
    } else if (event instanceof Event.Chose e) {
      out.put("step", e.step()).put("option", e.option());
      known(out, "changes", e.changes());
    } else if (event instanceof Event.Read e) {
      read(out, e);
    } else if (event instanceof Event.Offered e) {
      out.put("step", e.step()).put("turn", e.turn().turns());
    } else if (event instanceof Event.UndoAsked e) {
      out.put("step", e.step());
    } else if (event instanceof Event.Noted e) {
      out.put("step", e.step()).put("text", e.text());
    } else if (event instanceof Event.Adjusted e) {
      out.put("step", e.step()).put("change", e.change()).put("string", e.string());
      out.put("amount", finite(e.amount()));
    } else if (event instanceof Event.Turned e) {
      out.put("step", e.step()).put("turn", e.turn().turns()).put("feel", e.feel().word());
    } else if (event instanceof Event.Recalled e) {
      out.put("step", e.step()).put("turn", e.turned().turns()).put("sure", e.sure());
      known(out, "feel", e.feel() == null ? null : e.feel().word());
    } else if (event instanceof Event.WaitBegan e) {
      out.put("step", e.step()).put("until", e.until().toString());
    } else if (event instanceof Event.Waited e) {
      out.put("step", e.step());
      known(out, "reason", e.reason());
    } else if (event instanceof Event.Passed e) {
      out.put("step", e.step()).put("why", e.why());
    } else if (event instanceof Event.ReadBack e) {
      out.put("step", e.step()).put("line", e.line()).put("value", e.value());
    } else if (event instanceof Event.Doubted e) {
      out.put("step", e.step()).put("why", e.why());
    } else if (event instanceof Event.Corrected e) {
      out.put("step", e.step());
    } else if (event instanceof Event.Left e) {
      out.put("standing", e.standing());
    } else if (event instanceof Event.Ended e) {
      out.put("step", e.step()).put("hand-over", e.handOver());
      out.put("outcome", e.outcome()).put("why", e.why());
    } else if (event instanceof Event.Resumed e) {
      if (!e.elsewhere().isEmpty()) {
        past(out.putArray("elsewhere"), e.elsewhere());
      }
    } else {
      throw new IllegalStateException("no fields for " + event.getClass());
    }
    return out;
  }

  private static void started(ObjectNode out, Event.Started e) {
    out.put("procedure", e.procedure()).put("revision", e.revision()).put("digest", e.digest());
    out.put("role", e.role().word());
    known(out, "instrument", e.instrument());
    known(out, "kind", e.kind());
    known(out, "style", e.style() == null ? null : e.style().word());
    if (e.jointFret() != null) {
      out.put("joint-fret", e.jointFret());
    }
    past(out.putArray("past"), e.past());
    if (!e.before().isEmpty()) {
      before(out.putArray("before"), e.before());
    }
    if (e.own() != null) {
      OwnJson.write(out.putObject("own"), e.own());
    }
  }

  private static void past(ArrayNode list, List<Event.Past> past) {
    for (Event.Past p : past) {
      ObjectNode item = list.addObject();
      item.put("at", p.at().toString()).put("turn", p.turn().turns());
      BracketJson.write(item, "before", p.before());
      BracketJson.write(item, "after", p.after());
    }
  }

  private static void before(ArrayNode list, List<Event.Before> before) {
    for (Event.Before b : before) {
      ObjectNode item = list.addObject();
      item.put("at", b.at().toString()).put("quantity", b.quantity().word());
      known(item, "string", b.string());
      BracketJson.write(item, "mm", b.bracket());
      if (b.value() != null) {
        item.put("value", finite(b.value()));
      }
      ArrayNode since = item.putArray("since");
      b.since().forEach(since::add);
      if (b.readAt() >= 0) {
        ArrayNode held = item.putArray("held");
        b.held().forEach(held::add);
        item.put("read-at", b.readAt());
      }
    }
  }

  private static void read(ObjectNode out, Event.Read e) {
    out.put("step", e.step()).put("quantity", e.quantity().word());
    known(out, "which", e.which() == null ? null : e.which().word());
    known(out, "string", e.string());
    ArrayNode held = out.putArray("held");
    e.held().forEach(held::add);
    out.put("read-at", e.readAt()).put("gauge-step", finite(e.gaugeStep()));
    BracketJson.write(out, "mm", e.bracket());
    if (e.value() != null) {
      out.put("value", finite(e.value()));
    }
  }

  private static void known(ObjectNode out, String name, @Nullable String value) {
    if (value != null) {
      out.put(name, value);
    }
  }

  /** JSON has no spelling for infinity, and no gauge shows it. */
  private static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a reading must be a finite number, not " + value);
    }
    return value;
  }

  /**
   * The event that a JSON object stands for.
   *
   * @throws NotAnEvent naming the event or field that is unknown, missing or of the wrong kind
   */
  public static Event read(JsonNode node) throws NotAnEvent {
    Fields f = new Fields(node);
    try {
      Event event = event(f);
      f.nothingElse();
      return event;
    } catch (IllegalArgumentException e) {
      // A bracket or turn that its own record refuses.
      throw new NotAnEvent(String.valueOf(e.getMessage()));
    }
  }

  private static Event event(Fields f) throws NotAnEvent {
    String name = f.text("event");
    var at = f.instant("at");
    return switch (name) {
      case "started" ->
          new Event.Started(
              at,
              f.text("procedure"),
              f.whole("revision"),
              f.text("digest"),
              f.word("role", Role.values(), Role::word),
              f.textOrNull("instrument"),
              f.textOrNull("kind"),
              f.wordOrNull("style", Style.values(), Style::word),
              f.wholeOrNull("joint-fret"),
              past(f.list("past")),
              before(f.listOrEmpty("before")),
              f.has("own") ? OwnJson.read(f.object("own")) : null);
      case "accepted" -> new Event.Accepted(at, f.text("step"), f.text("hazard"));
      case "told" -> new Event.Told(at, f.text("step"), f.textOrNull("changes"));
      case "noted" -> new Event.Noted(at, f.text("step"), f.text("text"));
      case "adjusted" ->
          new Event.Adjusted(
              at, f.text("step"), f.text("change"), f.text("string"), f.number("amount"));
      case "chose" ->
          new Event.Chose(at, f.text("step"), f.text("option"), f.textOrNull("changes"));
      case "read" ->
          new Event.Read(
              at,
              f.text("step"),
              f.word("quantity", Quantity.values(), Quantity::word),
              f.wordOrNull("which", Which.values(), Which::word),
              f.textOrNull("string"),
              f.wholes("held"),
              f.whole("read-at"),
              f.number("gauge-step"),
              f.bracketOrNull("mm"),
              f.numberOrNull("value"));
      case "offered" -> new Event.Offered(at, f.text("step"), turn(f));
      case "undo-asked" -> new Event.UndoAsked(at, f.text("step"));
      case "turned" ->
          new Event.Turned(at, f.text("step"), turn(f), f.word("feel", Feel.values(), Feel::word));
      case "recalled" ->
          new Event.Recalled(
              at,
              f.text("step"),
              turn(f),
              f.yesOrNo("sure"),
              f.wordOrNull("feel", Feel.values(), Feel::word));
      case "wait-began" -> new Event.WaitBegan(at, f.text("step"), f.instant("until"));
      case "waited" -> new Event.Waited(at, f.text("step"), f.textOrNull("reason"));
      case "passed" -> new Event.Passed(at, f.text("step"), f.text("why"));
      case "read-back" -> new Event.ReadBack(at, f.text("step"), f.text("line"), f.text("value"));
      case "doubted" -> new Event.Doubted(at, f.text("step"), f.text("why"));
      case "corrected" -> new Event.Corrected(at, f.text("step"));
      case "left" -> new Event.Left(at, f.text("standing"));
      case "resumed" -> new Event.Resumed(at, past(f.listOrEmpty("elsewhere")));
      case "ended" ->
          new Event.Ended(
              at, f.text("step"), f.yesOrNo("hand-over"), f.text("outcome"), f.text("why"));
      default -> throw new NotAnEvent("its event \"" + Printable.of(name) + "\" is unknown");
    };
  }

  private static List<Event.Before> before(JsonNode list) throws NotAnEvent {
    List<Event.Before> out = new ArrayList<>();
    for (JsonNode item : list) {
      Fields f = new Fields(item);
      out.add(
          new Event.Before(
              f.instant("at"),
              f.word("quantity", Quantity.values(), Quantity::word),
              f.textOrNull("string"),
              f.bracketOrNull("mm"),
              f.numberOrNull("value"),
              f.texts("since"),
              f.has("held") ? f.wholes("held") : List.of(),
              f.has("read-at") ? f.whole("read-at") : -1));
      f.nothingElse();
    }
    return out;
  }

  private static Turn turn(Fields f) throws NotAnEvent {
    return new Turn(f.number("turn"));
  }

  private static List<Event.Past> past(JsonNode list) throws NotAnEvent {
    List<Event.Past> out = new ArrayList<>();
    for (JsonNode item : list) {
      Fields f = new Fields(item);
      out.add(
          new Event.Past(
              f.instant("at"), turn(f), f.bracketOrNull("before"), f.bracketOrNull("after")));
      f.nothingElse();
    }
    return out;
  }
}
