package quarterturn.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.session.BracketJson;
import quarterturn.session.Fields;
import quarterturn.session.NotAnEvent;
import quarterturn.unit.Bracket;
import quarterturn.unit.Printable;

/**
 * An event of a lesson as one JSON object: {@code at} and {@code event} first, then its own fields.
 * A field that is null in the event is left out.
 */
final class LessonJson {
  private static final Map<Class<? extends LessonEvent>, String> NAME_OF =
      LessonEvent.NAMES.entrySet().stream()
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getValue, Map.Entry::getKey));

  private LessonJson() {}

  static ObjectNode write(LessonEvent event) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("at", event.at().toString()).put("event", NAME_OF.get(event.getClass()));
    if (event instanceof LessonEvent.Joined e) {
      out.put("name", e.name());
    } else if (event instanceof LessonEvent.Came e) {
      out.put("student", e.student());
    } else if (event instanceof LessonEvent.Went e) {
      out.put("student", e.student());
    } else if (event instanceof LessonEvent.Stepped e) {
      spot(out, e.spot());
    } else if (event instanceof LessonEvent.Opened e) {
      spot(out, e.spot());
      out.put("turn", e.turn()).put("blind", e.blind());
      if (e.before() != null) {
        out.set("before", ValueJson.write(e.before()));
      }
      out.put("gauge-step", e.step());
      known(out, "question", e.question());
    } else if (event instanceof LessonEvent.Predicted e) {
      out.put("round", e.round()).put("student", e.student());
      Prediction p = e.prediction();
      out.put("direction", p.direction().word()).put("size", p.size());
      out.put("reason", p.reason()).put("helped", p.helped());
    } else if (event instanceof LessonEvent.Shown e) {
      out.put("round", e.round());
    } else if (event instanceof LessonEvent.BlindRead e) {
      out.put("round", e.round()).put("student", e.student());
      BracketJson.write(out, "mm", e.bracket());
    } else if (event instanceof LessonEvent.Unveiled e) {
      out.put("round", e.round());
    } else if (event instanceof LessonEvent.Resulted e) {
      out.put("round", e.round()).set("result", ValueJson.write(e.result()));
    } else if (event instanceof LessonEvent.Reflected e) {
      out.put("round", e.round()).put("student", e.student()).put("reason", e.reason());
      known(out, "question", e.question());
      known(out, "answer", e.answer());
      out.put("missed", e.missed());
    } else if (event instanceof LessonEvent.Held e) {
      spot(out, e.spot());
      out.put("waits-for", e.waitsFor()).set("value", ValueJson.write(e.value()));
    } else if (event instanceof LessonEvent.Stopped e) {
      known(out, "reason", e.reason());
    } else if (event instanceof LessonEvent.AskedAgain e) {
      out.put("student", e.student()).put("question", e.question()).put("answer", e.answer());
      out.put("missed", e.missed()).put("season", e.season());
    } else if (event instanceof LessonEvent.Accepted e) {
      out.put("ref", e.ref().toString()).set("takes", OrderJson.write(e.order()));
    } else if (event instanceof LessonEvent.Declined e) {
      out.put("ref", e.ref().toString()).put("why", e.why().word());
    } else if (event instanceof LessonEvent.Ordered e) {
      known(out, "bench", e.bench());
      out.set("asks", OrderJson.write(e.order()));
    }
    return out;
  }

  private static void spot(ObjectNode out, Spot spot) {
    out.put("procedure", spot.procedure()).put("step", spot.step());
    out.put("part", spot.part()).put("asked", spot.asked());
  }

  private static void known(ObjectNode out, String name, @Nullable String value) {
    if (value != null) {
      out.put(name, value);
    }
  }

  /**
   * The event that a JSON object stands for.
   *
   * @throws NotAnEvent naming the event or field that is unknown, missing or of the wrong kind
   */
  static LessonEvent read(JsonNode node) throws NotAnEvent {
    Fields f = new Fields(node);
    try {
      LessonEvent event = event(f);
      f.nothingElse();
      return event;
    } catch (IllegalArgumentException e) {
      // A bracket, a turn or a prediction that its own record refuses.
      throw new NotAnEvent(String.valueOf(e.getMessage()));
    }
  }

  private static LessonEvent event(Fields f) throws NotAnEvent {
    String name = f.text("event");
    Instant at = f.instant("at");
    return switch (name) {
      case "joined" -> new LessonEvent.Joined(at, f.text("name"));
      case "came" -> new LessonEvent.Came(at, f.text("student"));
      case "went" -> new LessonEvent.Went(at, f.text("student"));
      case "stepped" -> new LessonEvent.Stepped(at, spot(f));
      case "ticked" -> new LessonEvent.Ticked(at);
      case "opened" ->
          new LessonEvent.Opened(
              at,
              spot(f),
              f.yesOrNo("turn"),
              f.yesOrNo("blind"),
              ValueJson.readOrNull(f, "before"),
              f.number("gauge-step"),
              f.textOrNull("question"));
      case "predicted" ->
          new LessonEvent.Predicted(at, f.whole("round"), f.text("student"), prediction(f));
      case "shown" -> new LessonEvent.Shown(at, f.whole("round"));
      case "blind-read" ->
          new LessonEvent.BlindRead(at, f.whole("round"), f.text("student"), bracket(f));
      case "unveiled" -> new LessonEvent.Unveiled(at, f.whole("round"));
      case "resulted" ->
          new LessonEvent.Resulted(at, f.whole("round"), ValueJson.read(f.object("result")));
      case "reflected" ->
          new LessonEvent.Reflected(
              at,
              f.whole("round"),
              f.text("student"),
              f.text("reason"),
              f.textOrNull("question"),
              f.textOrNull("answer"),
              f.yesOrNo("missed"));
      case "held" ->
          new LessonEvent.Held(at, spot(f), f.text("waits-for"), ValueJson.read(f.object("value")));
      case "stopped" -> new LessonEvent.Stopped(at, f.textOrNull("reason"));
      case "asked-again" ->
          new LessonEvent.AskedAgain(
              at,
              f.text("student"),
              f.text("question"),
              f.text("answer"),
              f.yesOrNo("missed"),
              f.yesOrNo("season"));
      case "accepted" -> new LessonEvent.Accepted(at, ref(f), OrderJson.read(f.object("takes")));
      case "declined" ->
          new LessonEvent.Declined(at, ref(f), f.word("why", Refusal.values(), Refusal::word));
      case "ordered" ->
          new LessonEvent.Ordered(at, f.textOrNull("bench"), OrderJson.read(f.object("asks")));
      default -> throw new NotAnEvent("its event \"" + Printable.of(name) + "\" is unknown");
    };
  }

  private static Ref ref(Fields f) throws NotAnEvent {
    return Ref.parse(f.text("ref"));
  }

  private static Spot spot(Fields f) throws NotAnEvent {
    return new Spot(f.text("procedure"), f.text("step"), f.text("part"), f.whole("asked"));
  }

  private static Prediction prediction(Fields f) throws NotAnEvent {
    return new Prediction(
        f.word("direction", Direction.values(), Direction::word),
        f.number("size"),
        f.text("reason"),
        f.yesOrNo("helped"));
  }

  private static Bracket bracket(Fields f) throws NotAnEvent {
    Bracket bracket = f.bracketOrNull("mm");
    if (bracket == null) {
      throw new NotAnEvent("its field \"mm\" is missing");
    }
    return bracket;
  }
}
