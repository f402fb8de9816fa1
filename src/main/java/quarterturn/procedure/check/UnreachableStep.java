package quarterturn.procedure.check;

import java.util.Set;
import quarterturn.procedure.Step;

/** Every step is there for something. */
final class UnreachableStep implements Proving {
  @Override
  public String id() {
    return "unreachable-step";
  }

  @Override
  public String means() {
    return "Every step can be reached.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    Set<String> reached = proof.paths().reached();
    for (Step step : proof.steps().values()) {
      if (!reached.contains(step.id()) && proof.paths().whole()) {
        found.add(
            this,
            step.mark(),
            "nobody reaches the step " + step.id(),
            "let a step lead to it, or take it out");
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Look at the frets.
          go: fine
        - tell: listen
          text: Listen to the frets.
          go: fine
        - done: fine
          text: Nothing more to do.
          outcome: looked
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - tell: look
          text: Look at the frets.
          go: listen
        - tell: listen
          text: Listen to the frets.
          go: fine
        - done: fine
          text: Nothing more to do.
          outcome: looked
        """);
  }
}
