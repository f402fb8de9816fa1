package quarterturn.script;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import quarterturn.craft.rod.Allowed;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.craft.rod.Decision;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Range;
import quarterturn.craft.rod.Seen;
import quarterturn.procedure.Limits;
import quarterturn.unit.TypedLines;

/**
 * Advice for other programs: one JSON query in, one JSON answer out, which depends on the query
 * alone.
 */
public final class AdviceLines {
  /** Most characters of a query. */
  public static final int LONGEST = ScriptFace.LONGEST;

  private static final int DECIMALS = 4;

  private final BeliefAdvisor advisor = new BeliefAdvisor();
  private final Limits limits;

  /**
   * Creates the advice for a limits policy.
   *
   * @param limits the limits on rod turns
   */
  public AdviceLines(Limits limits) {
    this.limits = limits;
  }

  /** The JSON answer to one line; a line that can't be understood is answered with an error. */
  public String answer(TypedLines.Line line) {
    if (line.cut()) {
      return error("a line is at most " + LONGEST + " characters long");
    }
    try {
      return answer(AdviceQuery.of(ReplyFields.object(line.text()), limits.knownFor())).toString();
    } catch (BadAnswerException | IllegalArgumentException e) {
      return error(String.valueOf(e.getMessage()));
    }
  }

  private static String error(String what) {
    return JsonNodeFactory.instance.objectNode().put("error", what).toString();
  }

  private JsonNode answer(AdviceQuery query) {
    Decision decision =
        advisor.decide(query.window(), query.known(), query.story(), allowed(query));
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    Decision.Step step = decision.step();
    String why = decision.why();
    if (step instanceof Decision.TurnRod turn) {
      json.put("action", "turn");
      json.put("turns", turn.turn().turns());
      Range expected = turn.expected();
      ArrayNode range = json.putArray("expected_mm");
      number(range, expected.lowMm());
      number(range, expected.highMm());
    } else if (step instanceof Decision.Leave) {
      json.put("action", "done");
    } else if (step instanceof Decision.ReadAgain) {
      json.put("action", "measure-again");
    } else if (step instanceof Decision.HandOver over) {
      json.put("action", "hand-over");
      json.put("text", why);
      why = over.reason().word();
    }
    json.set("p_in_window", rounded(decision.inWindow()));
    json.put("why", why);
    json.set("known", known(decision.known()));
    return json;
  }

  /**
   * The limits for a query; lower for the first move of a neck that has never been seen to answer.
   */
  private Allowed allowed(AdviceQuery query) {
    boolean turned = query.story().stream().anyMatch(Seen.Turned.class::isInstance);
    boolean first = !turned && !query.known().answered();
    return new Allowed(first ? limits.firstMove() : limits.perReading(), limits.fromAsFound());
  }

  /** What is known of a neck, as JSON that a later query may contain. */
  static JsonNode known(Known known) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("mm_per_quarter", rounded(known.mmPerQuarter()));
    json.set("sigma", rounded(known.sigma()));
    slack(json.putArray("slack"), known.slack());
    json.put("way", known.way());
    json.put("answered", known.answered());
    return json;
  }

  /** Adds the chances of each slack, rounded so that their sum is one. */
  private static void slack(ArrayNode json, List<Double> chances) {
    BigDecimal rest = BigDecimal.ONE;
    for (double chance : chances.subList(1, chances.size())) {
      rest = rest.subtract(decimal(chance));
    }
    json.add(rest.max(BigDecimal.ZERO));
    chances.subList(1, chances.size()).forEach(chance -> json.add(decimal(chance)));
  }

  private static void number(ArrayNode json, double value) {
    if (Double.isFinite(value)) {
      json.add(decimal(value));
    } else {
      json.addNull();
    }
  }

  private static JsonNode rounded(double value) {
    return JsonNodeFactory.instance.numberNode(decimal(value));
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
