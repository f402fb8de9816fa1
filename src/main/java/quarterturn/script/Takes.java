package quarterturn.script;

import java.util.Arrays;
import java.util.stream.Collectors;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Prompt;

/** Words for the answers that each prompt takes, for an error message. */
final class Takes {
  private static final String TRUE = "{\"answer\":true}";

  private Takes() {}

  /** The words for a prompt, such as "this prompt takes ...". */
  static String of(Prompt prompt) {
    return "this prompt takes "
        + own(prompt)
        + "; every prompt takes {\"answer\":\"correct\"} and {\"answer\":\"quit\"}, and any answer"
        + " may carry \"at\"";
  }

  private static String own(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> TRUE,
            caution -> TRUE,
            Takes::option,
            write -> "{\"answer\":\"one line of words\"}",
            Takes::reading,
            Takes::turn,
            wait -> "{\"answer\":\"waited\"}, with \"reason\":\"...\" to end it early",
            done -> TRUE,
            over -> TRUE));
  }

  private static String option(Prompt.Choose choose) {
    return choose.options().stream()
        .map(o -> "{\"answer\":\"" + o.id() + "\"}")
        .collect(Collectors.joining(" or "));
  }

  private static String reading(Prompt.Measure measure) {
    return measure.quantity().bracket()
        ? "{\"passes_mm\":0.30,\"lifts_mm\":0.35} or one of the two, the same with passes_in and"
            + " lifts_in, {\"answer\":\"0.30 passes 0.35 lifts\"}, {\"answer\":\"touches\"} or"
            + " {\"answer\":\"cannot\"}"
        : "{\"answer\":"
            + (measure.quantity() == Quantity.HUMIDITY ? "48" : "2.25")
            + "} or {\"answer\":\"cannot\"}";
  }

  private static String turn(Prompt.TurnRod turn) {
    return "{\"turned\":0.125,\"feel\":\"smooth\"} with feel one of "
        + feels()
        + ", the same with \"way\":\"tighten\" or \"way\":\"loosen\""
        + (turn.canUndo() ? ", or {\"answer\":\"undo\"}" : "");
  }

  static String feels() {
    return Arrays.stream(Feel.values()).map(Feel::word).collect(Collectors.joining(", "));
  }
}
