package quarterturn.procedure.check.rule.text;

import quarterturn.procedure.Protection;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that no words talk a protection or a warning away. */
public final class TalkedAway {
  public static final Rule RULE =
      Rule.ofSteps(
          "talked-away",
          "No words say that a protection or a warning isn't needed, or bring a face to a tight string.",
          TalkedAway::prove);

  /** The hazard of a string that flies. */
  private static final String WHIP = "string-whip";

  private TalkedAway() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean tight = step.words().hazards().contains(WHIP);
    step.words()
        .sentences()
        .filter(one -> Protection.dismissed(one) || tight && Protection.near(one))
        .forEach(
            sentence ->
                found.add(
                    step,
                    step.id() + " talks a protection away: \"" + sentence + "\"",
                    "take it out: what a hazard asks for holds whenever it is shown"));
  }
}
