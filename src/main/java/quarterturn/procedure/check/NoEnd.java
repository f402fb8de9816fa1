package quarterturn.procedure.check;

import java.util.List;
import quarterturn.procedure.Step;

/** Every way has an end. */
final class NoEnd implements Proving {
  @Override
  public String id() {
    return "no-end";
  }

  @Override
  public String means() {
    return "From every step a done or a hand-over can be reached.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      if (!Shape.ends(proof.procedure(), step.id())) {
        Paths.Node node = proof.nearest(step.id());
        found.add(
            this,
            step.mark(),
            "from " + step.id() + " neither a done nor a hand-over can be reached",
            "let one of its ways lead to an end",
            node == null ? List.of() : proof.paths().way(node));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - choose: look
          text: Does a fret stand out?
          options:
            - is: even
              label: No
              go: fine
            - is: high
              label: Yes
              go: wait-a-little
        - wait: wait-a-little
          text: Let it be for {minutes}.
          for: 10 min
          go: wait-a-little
        - done: fine
          text: Nothing more to do.
          outcome: looked
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - choose: look
          text: Does a fret stand out?
          options:
            - is: even
              label: No
              go: fine
            - is: high
              label: Yes
              go: wait-a-little
        - wait: wait-a-little
          text: Let it be for {minutes}.
          for: 10 min
          go: fine
        - done: fine
          text: Nothing more to do.
          outcome: looked
        """);
  }
}
