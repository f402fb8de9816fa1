package quarterturn.jar;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * An answer that was sent, or one that is on record, in the same few words, so that the two can be
 * compared.
 *
 * @param at when it was given
 * @param what the step and the answer
 */
record Said(Instant at, String what) {
  /** The answer {@code sent} to {@code prompt}. */
  static Said of(JsonNode prompt, JsonNode sent) {
    String step = prompt.path("step").textValue() + " ";
    String what =
        switch (prompt.path("prompt").textValue()) {
          case "tell" -> "told " + step;
          case "hazard" -> "accepted " + hazards(prompt.path("hazards"));
          case "measure" -> "read " + step + reading(sent);
          case "turn" ->
              "turned " + step + turns(sent.path("turned").doubleValue()) + sent.path("feel");
          case "wait" -> "waited " + step;
          case "write" -> "noted " + step + sent.path("answer").textValue();
          default -> "chose " + step + sent.path("answer").textValue();
        };
    return new Said(Instant.parse(sent.path("at").textValue()), what);
  }

  private static String hazards(JsonNode page) {
    List<String> ids = new ArrayList<>();
    page.forEach(one -> ids.add(one.textValue()));
    return String.join(", ", ids);
  }

  private static String reading(JsonNode sent) {
    if (sent.path("answer").isNumber()) {
      return number(sent.path("answer").doubleValue());
    }
    if (sent.has("answer")) {
      return sent.path("answer").textValue();
    }
    String passes = sent.has("passes_mm") ? number(sent.path("passes_mm").doubleValue()) : "";
    return passes + ".." + number(sent.path("lifts_mm").doubleValue());
  }

  /** The person's answer on record in {@code event}, or null where it is none. */
  static @Nullable Said of(Event event) {
    String what = what(event);
    return what == null ? null : new Said(event.at(), what);
  }

  private static @Nullable String what(Event event) {
    if (event instanceof Event.Told told) {
      return "told " + told.step() + " ";
    } else if (event instanceof Event.Accepted accepted) {
      return "accepted " + String.join(", ", accepted.hazards());
    } else if (event instanceof Event.Chose chose) {
      return "chose " + chose.step() + " " + chose.option();
    } else if (event instanceof Event.Noted noted) {
      return "noted " + noted.step() + " " + noted.text();
    } else if (event instanceof Event.Read read) {
      return "read " + read.step() + " " + reading(read);
    } else if (event instanceof Event.Turned turned) {
      String feel = "\"" + turned.feel().word() + "\"";
      return "turned " + turned.step() + " " + turns(turned.turn().turns()) + feel;
    } else if (event instanceof Event.Recalled recalled) {
      boolean made = recalled.turned().turns() != 0;
      String option = !made ? "not-made" : recalled.sure() ? "made" : "unsure";
      return "chose was-turn-made " + option;
    } else if (event instanceof Event.Waited waited) {
      return "waited " + waited.step() + " ";
    }
    return null;
  }

  private static String reading(Event.Read read) {
    Bracket bracket = read.bracket();
    if (bracket == null) {
      return read.value() == null ? "cannot" : number(read.value());
    }
    if (bracket.noGap()) {
      return "touches";
    }
    return (bracket.lowMm() > 0 ? number(bracket.lowMm()) : "") + ".." + number(bracket.highMm());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static String turns(double turns) {
    return String.format(Locale.ROOT, "%.4f ", turns);
  }

  /** The person's answers in a record, oldest first. */
  static List<Said> all(List<Event> events) {
    return events.stream().map(Said::of).filter(java.util.Objects::nonNull).toList();
  }
}
