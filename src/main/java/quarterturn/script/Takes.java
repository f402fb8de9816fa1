package quarterturn.script;

import java.util.Arrays;
import java.util.stream.Collectors;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Quantity;
import quarterturn.session.Prompt;

/** What each prompt takes, as it stands in an error. */
final class Takes {
  private Takes() {}

  /** "this prompt takes ...". */
  static String of(Prompt prompt) {
    return "this prompt takes "
        + own(prompt)
        + "; every prompt takes {\"answer\":\"correct\"} and {\"answer\":\"quit\"}, and any answer"
        + " may carry \"at\"";
  }

  private static String own(Prompt prompt) {
    if (prompt instanceof Prompt.Choose choose) {
      return choose.options().stream()
          .map(o -> "{\"answer\":\"" + o.id() + "\"}")
          .collect(Collectors.joining(" or "));
    }
    if (prompt instanceof Prompt.Measure measure) {
      return measure.quantity().bracket()
          ? "{\"passes_mm\":0.30,\"lifts_mm\":0.35} or one of the two, the same with passes_in and"
              + " lifts_in, {\"answer\":\"0.30 passes 0.35 lifts\"}, {\"answer\":\"touches\"} or"
              + " {\"answer\":\"cannot\"}"
          : "{\"answer\":"
              + (measure.quantity() == Quantity.HUMIDITY ? "48" : "2.25")
              + "} or {\"answer\":\"cannot\"}";
    }
    if (prompt instanceof Prompt.Write) {
      return "{\"answer\":\"one line of words\"}";
    }
    if (prompt instanceof Prompt.TurnRod turn) {
      return "{\"turned\":0.125,\"feel\":\"smooth\"} with feel one of "
          + feels()
          + ", the same with \"way\":\"tighten\" or \"way\":\"loosen\""
          + (turn.canUndo() ? ", or {\"answer\":\"undo\"}" : "");
    }
    if (prompt instanceof Prompt.Wait) {
      return "{\"answer\":\"waited\"}, with \"reason\":\"...\" to end it early";
    }
    return "{\"answer\":true}";
  }

  static String feels() {
    return Arrays.stream(Feel.values()).map(Feel::word).collect(Collectors.joining(", "));
  }
}
