package quarterturn.session.journal;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import quarterturn.craft.Window;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Carried;
import quarterturn.session.Event;

/**
 * Writes and reads events as JSON objects: {@code at} and {@code event} first, then the event's own
 * fields.
 */
final class EventJson {
  static final KindsJson<Event> EVENTS = events();

  private EventJson() {}

  private static KindsJson<Event> events() {
    Shapes shapes =
        new Shapes()
            .words(Aim.class, Aim::word)
            .words(BridgeKind.class, BridgeKind::word)
            .words(Carried.Answer.class, Carried.Answer::word)
            .words(Feel.class, Feel::word)
            .words(NutKind.class, NutKind::word)
            .words(PickupKind.class, PickupKind::word)
            .words(Quantity.class, Quantity::word)
            .words(RodKind.class, RodKind::word)
            .words(Recorded.class, Recorded::word)
            .words(Role.class, Role::word)
            .words(Style.class, Style::word)
            .words(Which.class, Which::word);
    windows(shapes);
    shapes.object(
        Event.Past.class, shapes.record(Event.Past.class, "at turn before? after? freed? latest?"));
    shapes.object(Event.Before.class, before(shapes));
    shapes.object(Event.Known.class, shapes.record(Event.Known.class, "at what answer"));
    shapes.object(
        Event.Own.class,
        shapes.record(
            Event.Own.class,
            "scale-mm? tuning gauges-mm radius-mm? fixed-saddles windows nut? bridge?"
                + " pickup? rod?"));
    shapes.object(Event.Summed.class, shapes.record(Event.Summed.class, "turn turns until"));
    shapes.object(
        Event.Earlier.class, shapes.record(Event.Earlier.class, "sessions names summed?"));
    shapes.object(Carried.Stop.class, shapes.record(Carried.Stop.class, "at session outcome why"));
    shapes.object(
        Carried.Said.class, shapes.record(Carried.Said.class, "at about answer turn? words?"));
    shapes.object(Carried.class, shapes.record(Carried.class, "stops? unsure? day? spent? said?"));
    return new KindsJson<Event>("event", shapes)
        .kind(
            "started",
            Event.Started.class,
            "at procedure revision digest role instrument? kind? style? joint-fret? past before?"
                + " own? carried? from? by? known? lesson? back? earlier?")
        .kind("accepted", Event.Accepted.class, "at step hazard also?")
        .kind("told", Event.Told.class, "at step changes?")
        .kind("noted", Event.Noted.class, "at step text")
        .kind("adjusted", Event.Adjusted.class, "at step change string amount")
        .kind("chose", Event.Chose.class, "at step option changes?")
        .kind(
            "read",
            Event.Read.class,
            "at step quantity which? string? held read-at gauge-step mm? value?")
        .kind("offered", Event.Offered.class, "at step turn freed? expected?")
        .kind("undo-asked", Event.UndoAsked.class, "at step")
        .kind("turned", Event.Turned.class, "at step turn feel")
        .kind("recalled", Event.Recalled.class, "at step turn sure feel?")
        .kind("wait-began", Event.WaitBegan.class, "at step until")
        .kind("waited", Event.Waited.class, "at step reason?")
        .kind("passed", Event.Passed.class, "at step why")
        .kind("read-back", Event.ReadBack.class, "at step line value")
        .kind("doubted", Event.Doubted.class, "at step why")
        .kind("corrected", Event.Corrected.class, "at step")
        .kind("left", Event.Left.class, "at standing")
        .kind("resumed", Event.Resumed.class, "at elsewhere? carried? by?")
        .kind("ended", Event.Ended.class, "at step hand-over outcome why")
        .kind("discarded", Event.Discarded.class, "at standing");
  }

  /** The JSON of an earlier reading, without frets where the kind's convention was used. */
  private static ObjectJson<Event.Before> before(Shapes shapes) {
    String fields = "at quantity string? mm? value? since";
    ObjectJson<Event.Before> plain = shapes.record(Event.Before.class, fields);
    ObjectJson<Event.Before> whole = shapes.record(Event.Before.class, fields + " held read-at");
    return new ObjectJson<>() {
      @Override
      public void write(ObjectNode out, Event.Before before) {
        (before.readAt() < 0 ? plain : whole).write(out, before);
      }

      @Override
      public Event.Before read(Fields fields) throws NotAnEventException {
        return (fields.has("held") ? whole : plain).read(fields);
      }
    };
  }

  private record Aimed(Aim aim, double low, double high) {
    static Aimed of(Map.Entry<Aim, Window> entry) {
      return new Aimed(entry.getKey(), entry.getValue().lowMm(), entry.getValue().highMm());
    }

    Window window() {
      return new Window(low, high);
    }
  }

  /** Adds the JSON of an instrument's own windows, ordered by what they are for. */
  private static void windows(Shapes shapes) {
    ObjectJson<Aimed> aimed = shapes.record(Aimed.class, "aim low high");
    shapes.one(
        new TypeReference<Map<Aim, Window>>() {}.getType(),
        (Map<Aim, Window> windows) ->
            Shapes.list(new TreeMap<>(windows).entrySet(), entry -> aimed.write(Aimed.of(entry))),
        (fields, name) ->
            fields.list(name, aimed).stream()
                .collect(Collectors.toMap(Aimed::aim, Aimed::window, (first, last) -> last)));
  }
}
