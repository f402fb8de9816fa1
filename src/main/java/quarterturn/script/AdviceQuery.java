package quarterturn.script;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Prior;
import quarterturn.craft.rod.Seen;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.unit.Bracket;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** A query: the window, what is known of the neck, and its readings and turns so far. */
record AdviceQuery(Window window, Known known, List<Seen> story) {
  private static final int MOST_MOVES = 200;

  private static final double LARGEST_TURN = 1;
  private static final double LARGEST_MM = 10;

  /**
   * Reads a query.
   *
   * @param knownFor the age given to what is known of the neck, since a query has no times
   * @throws BadAnswerException naming the key that is wrong and what is allowed there
   */
  static AdviceQuery of(JsonNode json, Duration knownFor) throws BadAnswerException {
    allow(json, Set.of("window_mm", "prior", "moves", "known"));
    Prior prior = prior(json.path("prior"));
    return new AdviceQuery(
        window(json.path("window_mm")),
        json.has("known") ? known(json.get("known")).rested(knownFor.toHours()) : Known.of(prior),
        story(json.path("moves")));
  }

  private static void allow(JsonNode json, Set<String> allowed) throws BadAnswerException {
    for (Iterator<String> names = json.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!allowed.contains(name)) {
        throw new BadAnswerException(
            "there is no key \""
                + ReplyFields.shown(name)
                + "\"; allowed are "
                + String.join(", ", allowed.stream().sorted().toList()));
      }
    }
  }

  private static Prior prior(JsonNode json) throws BadAnswerException {
    for (Prior prior : Prior.values()) {
      if (prior.word().equals(json.asText())) {
        return prior;
      }
    }
    throw new BadAnswerException("prior: \"bass\" or \"guitar\"");
  }

  private static Window window(JsonNode json) throws BadAnswerException {
    boolean pair = json.size() == 2 && json.path(0).isNumber() && json.path(1).isNumber();
    if (!json.isArray() || !pair || !(json.get(0).doubleValue() < json.get(1).doubleValue())) {
      throw new BadAnswerException(
          "window_mm: two numbers, the lower one first, such as [0.25,0.40]");
    }
    double low = near(json.get(0).doubleValue(), "window_mm");
    double high = near(json.get(1).doubleValue(), "window_mm");
    try {
      return BoundsReader.of(Quantity.RELIEF).window(new Window(low, high));
    } catch (NotUnderstoodException e) {
      throw new BadAnswerException("window_mm: " + e.getMessage());
    }
  }

  private static List<Seen> story(JsonNode json) throws BadAnswerException {
    if (!json.isArray() || json.size() > MOST_MOVES) {
      throw new BadAnswerException("moves: a list of readings and turns, at most " + MOST_MOVES);
    }
    List<Seen> story = new ArrayList<>();
    for (JsonNode move : json) {
      if (move.size() == 1 && move.has("reading_mm")) {
        story.add(new Seen.Read(bracket(move.get("reading_mm"))));
      } else if (move.size() == 1 && move.path("turn").isNumber()) {
        story.add(new Seen.Turned(turn(move.get("turn").doubleValue())));
      } else {
        throw new BadAnswerException(
            "moves: each is {\"reading_mm\":[low,high]} or {\"turn\":0.125}");
      }
    }
    if (story.stream().anyMatch(Seen.Turned.class::isInstance)
        && !(story.get(0) instanceof Seen.Read)) {
      throw new BadAnswerException("moves: a turn needs a reading before it");
    }
    return story;
  }

  private static Turn turn(double turns) throws BadAnswerException {
    if (!(Math.abs(turns) <= LARGEST_TURN)) {
      throw new BadAnswerException("turn: in turns, plus tightens, at most one either way");
    }
    return new Turn(turns);
  }

  /**
   * A bracket from two bounds in millimetres: null at the left for no gap, null at the right for
   * one wider than the thickest leaf.
   */
  private static Bracket bracket(JsonNode json) throws BadAnswerException {
    boolean low = json.path(0).isNumber();
    boolean high = json.path(1).isNumber();
    boolean pair = json.isArray() && json.size() == 2 && (low || high);
    if (!pair || !(low || json.get(0).isNull()) || !(high || json.get(1).isNull())) {
      throw new BadAnswerException(
          "reading_mm: [low,high] in mm, [null,0.05] where the string touches, [1.0,null] beyond"
              + " the thickest gauge");
    }
    return new Bracket(
        low ? near(json.get(0).doubleValue(), "reading_mm") : Double.NEGATIVE_INFINITY,
        high ? near(json.get(1).doubleValue(), "reading_mm") : Double.POSITIVE_INFINITY);
  }

  /** A relief in millimetres, checked to be one that a neck can have. */
  private static double near(double mm, String key) throws BadAnswerException {
    if (!(Math.abs(mm) <= LARGEST_MM)) {
      throw new BadAnswerException(key + ": in mm, at most " + (int) LARGEST_MM + " either way");
    }
    return mm;
  }

  private static Known known(JsonNode json) throws BadAnswerException {
    allow(json, Set.of("mm_per_quarter", "sigma", "slack", "way", "answered"));
    boolean whole =
        json.path("mm_per_quarter").isNumber()
            && json.path("sigma").isNumber()
            && json.path("slack").isArray()
            && json.path("way").isInt()
            && json.path("answered").isBoolean();
    if (!whole) {
      throw new BadAnswerException("known: an object as an earlier answer gave it");
    }
    List<Double> slack = new ArrayList<>();
    for (JsonNode chance : json.get("slack")) {
      slack.add(chance.isNumber() ? chance.doubleValue() : Double.NaN);
    }
    try {
      return new Known(
          json.get("mm_per_quarter").doubleValue(),
          json.get("sigma").doubleValue(),
          slack,
          json.get("way").intValue(),
          json.get("answered").booleanValue());
    } catch (IllegalArgumentException e) {
      throw new BadAnswerException("known: " + e.getMessage());
    }
  }
}
