package quarterturn.procedure.check.rule;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** The rule that a step does one thing. */
public final class TwoActions {
  public static final Rule RULE =
      Rule.ofSteps(
          "two-actions", "A step asks for one act that changes the instrument.", TwoActions::prove);

  /** Verbs of orders that change an instrument; looking, holding and reading change nothing. */
  private static final Set<String> CHANGING =
      Set.of(
          "tune", "slacken", "loosen", "tighten", "turn", "cut", "trim", "fit", "lower", "raise",
          "seat", "unscrew", "file", "glue", "shim", "oil", "stretch", "swap", "replace");

  private TwoActions() {}

  private static void prove(Proof proof, Step step, Findings found) {
    List<String> acts = step instanceof Step.End ? List.of() : acts(proof.said(step));
    if (acts.size() > 1) {
      found.add(
          step,
          step.id() + " asks for more than one act: " + String.join(", ", acts),
          "give each act a step of its own");
    }
    if (step instanceof Step.Tell tell && tell.establishes().size() > 1) {
      String facts =
          tell.establishes().stream().map(Fact::word).sorted().collect(Collectors.joining(", "));
      found.add(
          step,
          step.id() + " establishes more than one thing: " + facts,
          "give each a step of its own");
    }
  }

  /** The different verbs of change that the text orders, in the order they come. */
  private static List<String> acts(List<Said> all) {
    return all.stream()
        .filter(said -> said.where() == Said.Where.TEXT && said.order().onPart())
        .map(said -> said.order().verb())
        .filter(CHANGING::contains)
        .distinct()
        .toList();
  }
}
