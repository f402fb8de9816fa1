package quarterturn.procedure.check;

import quarterturn.procedure.Step;

/** Some way on is always open. */
final class OpenBranches implements Proving {
  @Override
  public String id() {
    return "open-branches";
  }

  @Override
  public String means() {
    return "Branches cover every answer, the boundaries and what cannot be measured included.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Wanting fork : proof.paths().wanting()) {
      Step step = fork.node().step();
      for (Fan.Taken taken : fork.spread().taken()) {
        if (taken.branch() == Fan.HOLE) {
          found.add(
              this,
              step.mark(),
              "no branch of " + step.id() + " holds for: " + fork.fan().words(taken),
              "add a branch for it, or widen one; a bound belongs to \"at least\", not to \"below\"",
              proof.paths().way(fork.node()));
        }
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
            - when: humidity below 40 %
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
            - when: humidity below 40 %
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
}
