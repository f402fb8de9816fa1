package quarterturn.procedure.check;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** No end leaves the instrument apart. */
final class LeftApart implements Proving {
  @Override
  public String id() {
    return "left-apart";
  }

  @Override
  public String means() {
    return "A procedure does not end as done with the neck loose in its pocket or the strings slack.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      if (step instanceof Step.Done done) {
        proof.paths().at(done.id()).forEach(node -> apart(proof, done, node, found));
      }
    }
  }

  private void apart(Proof proof, Step.Done done, Paths.Node node, Findings found) {
    if (node.at().has(Fact.DETUNED)) {
      found.add(
          this,
          done.mark(),
          done.id() + " can be reached with the strings slack",
          "let a step that establishes at-pitch come first, or hand over",
          proof.paths().way(node));
    }
    if (node.at().has(Fact.NECK_LOOSE)) {
      found.add(
          this,
          done.mark(),
          done.id() + " can be reached with the neck loose in its pocket",
          "let a step that establishes neck-fast come first, or hand over",
          proof.paths().way(node));
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: loose
          text: Unscrew the neck.
          hazards: [neck-joint]
          establishes: [neck-loose]
          go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - tell: loose
          text: Unscrew the neck.
          hazards: [neck-joint]
          establishes: [neck-loose]
          go: fast
        - tell: fast
          text: Tighten the screws of the neck crosswise.
          hazards: [neck-joint]
          establishes: [neck-fast]
          changes: neck-refit
          go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }
}
