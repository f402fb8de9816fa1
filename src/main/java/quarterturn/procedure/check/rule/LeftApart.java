package quarterturn.procedure.check.rule;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Reachability;

/** The rule that nothing is tuned, and no end comes, with the instrument apart. */
public final class LeftApart {
  public static final Rule RULE =
      Rule.ofSteps(
          "left-apart",
          "No strings are tuned with the neck loose in its pocket; nothing ends as done so, or with them slack.",
          LeftApart::prove);

  private LeftApart() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step.establishes().contains(Fact.AT_PITCH)) {
      proof
          .nearest(step, at -> at.has(Fact.NECK_LOOSE))
          .ifPresent(
              node ->
                  found.add(
                      node,
                      step.id() + " tunes the strings with the neck loose in its pocket",
                      "let a step that establishes neck-fast come first"));
    }
    if (step instanceof Step.Done) {
      for (Reachability.Node node : proof.paths().at(step.id())) {
        apart(node, Fact.DETUNED, "the strings slack", Fact.AT_PITCH, found);
        apart(node, Fact.NECK_LOOSE, "the neck loose in its pocket", Fact.NECK_FAST, found);
      }
    }
  }

  private static void apart(
      Reachability.Node node, Fact apart, String words, Fact mend, Findings found) {
    if (node.at().has(apart)) {
      found.add(
          node,
          node.step().id() + " can be reached with " + words,
          node.at().stopped()
              ? "hand over: the nut felt as if it must be left alone"
              : "let a step that establishes " + mend.word() + " come first, or hand over");
    }
  }
}
