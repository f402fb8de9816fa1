package quarterturn.procedure.check.rule;

import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** The rule that a step does one thing. */
public final class TwoActions {
  public static final Rule RULE =
      Rule.ofSteps(
          "two-actions", "A step asks for one act that changes the instrument.", TwoActions::prove);

  private TwoActions() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean ends = step instanceof Step.Done || step instanceof Step.HandOver;
    Set<String> acts = ends ? Set.of() : Acts.in(step.words().text());
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
}
