package quarterturn.procedure.check;

import quarterturn.procedure.Branch;

/** No answer has two ways on. */
final class OverlappingBranches implements Proving {
  @Override
  public String id() {
    return "overlapping-branches";
  }

  @Override
  public String means() {
    return "No two branches of a step hold at once and lead to different steps.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Wanting fork : proof.paths().wanting()) {
      for (Fan.Overlap overlap : fork.spread().overlaps()) {
        Branch first = fork.fan().fork().branches().get(overlap.first());
        Branch second = fork.fan().fork().branches().get(overlap.second());
        found.add(
            this,
            second.mark(),
            "the branches to "
                + first.go()
                + " and to "
                + second.go()
                + " both hold for: "
                + fork.fan().words(overlap.cells()),
            "let each answer have one way on; where two questions mix, ask one a step",
            proof.paths().way(fork.node()));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - measure: humidity
          text: Read the humidity of the room.
          quantity: humidity
          gauge: 1 %
          plausible: 0..100 %
          branches:
            - when: humidity cannot be measured
              go: one
            - when: humidity below 45 %
              go: one
            - when: humidity at least 40 %
              go: other
        - done: one
          text: The first end.
          outcome: one
        - done: other
          text: The other end.
          outcome: other
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - measure: humidity
          text: Read the humidity of the room.
          quantity: humidity
          gauge: 1 %
          plausible: 0..100 %
          branches:
            - when: humidity cannot be measured
              go: one
            - when: humidity below 45 %
              go: one
            - when: humidity at least 45 %
              go: other
        - done: one
          text: The first end.
          outcome: one
        - done: other
          text: The other end.
          outcome: other
        """);
  }
}
