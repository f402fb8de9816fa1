package quarterturn.jar;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Set;

/**
 * A neck on a bench, of invented numbers, that answers prompts as a careful person would. It knows
 * what was done to it whatever the program remembers, and fails the test when it is turned too far
 * or too soon.
 */
final class Neck {
  private static final Set<String> TUNED = Set.of("tune", "retune", "tune-again");
  private static final double MOST = 0.25;

  private double gap;
  private final double response;
  private final String feel;
  private final String place;
  private boolean pitch;
  private boolean settled;
  private boolean read;
  private int turns;

  /**
   * @param gap relief in millimetres, below zero where the neck is bowed back
   * @param response millimetres less for a quarter turn of tightening
   * @param feel how the rod nut feels at every turn
   * @param place where the rod nut is
   */
  Neck(double gap, double response, String feel, String place) {
    this.gap = gap;
    this.response = response;
    this.feel = feel;
    this.place = place;
  }

  static Neck of(double gap, double response) {
    return new Neck(gap, response, "smooth", "headstock");
  }

  /** How often it was turned in truth. */
  /** Whether what is told comes together with what is asked, as it does to a technician alone. */
  private boolean technician;

  int turns() {
    return turns;
  }

  double gap() {
    return gap;
  }

  /** Does what the prompt asks and says so. */
  ObjectNode answer(JsonNode prompt) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    String step = prompt.path("step").textValue();
    // What comes before a turn is told to a beginner too.
    technician |= prompt.has("first") && !prompt.path("prompt").textValue().equals("turn");
    switch (prompt.path("prompt").textValue()) {
      case "tell", "hazard" -> {
        if (prompt.path("prompt").textValue().equals("tell")) {
          told(step);
        }
        answer.put("answer", true);
      }
      case "choose" -> {
        String first = prompt.path("options").path(0).textValue();
        answer.put("answer", step.equals("rod-place") ? place : first);
      }
      case "write" -> answer.put("answer", "-");
      case "measure" -> measure(prompt, answer);
      case "turn" -> {
        turn(prompt);
        answer.put("turned", feel.equals("jammed") ? 0 : prompt.path("turns").doubleValue());
        answer.put("feel", feel);
      }
      case "wait" -> {
        settled = settled || pitch;
        answer.put("answer", "waited");
      }
      default -> throw new AssertionError("no answer to " + prompt);
    }
    return answer;
  }

  private void told(String step) {
    if (TUNED.contains(step)) {
      pitch = true;
      settled = false;
    } else if (step.equals("detune")) {
      pitch = false;
      settled = false;
    }
  }

  private void measure(JsonNode prompt, ObjectNode answer) {
    if (prompt.path("quantity").textValue().equals("humidity")) {
      answer.put("answer", 50);
      return;
    }
    // A technician whose strings are the old ones goes without the wait before the first turn.
    settled |= pitch && technician && turns == 0;
    require(pitch && settled, "a reading before the neck was tuned and settled", prompt);
    boolean lowest = prompt.path("which").textValue().equals("lowest");
    read = read || lowest;
    leaves(lowest ? gap : gap - 0.02, answer);
  }

  /** What leaves in steps of 0.05 mm say. */
  private static void leaves(double gap, ObjectNode answer) {
    if (gap <= 0) {
      answer.put("answer", "touches");
      return;
    }
    int passes = (int) Math.floor(gap / 0.05 + 1e-9) * 5;
    if (passes > 0) {
      answer.put("passes_mm", passes / 100.0);
    }
    answer.put("lifts_mm", (passes + 5) / 100.0);
  }

  /** Turns the rod as the prompt asks, without saying so. */
  void turn(JsonNode prompt) {
    double asked = prompt.path("turns").doubleValue();
    require(Math.abs(asked) <= MOST + 1e-9, "a turn of more than a quarter", prompt);
    require(read, "a turn without tuning, settling and a reading since the last", prompt);
    if (feel.equals("jammed")) {
      return;
    }
    gap -= asked * 4 * response;
    turns++;
    pitch = false;
    settled = false;
    read = false;
  }

  private static void require(boolean held, String what, JsonNode prompt) {
    if (!held) {
      throw new AssertionError(what + ": " + prompt);
    }
  }
}
