package quarterturn.procedure.check;

import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;

/** Every branch can be taken. */
final class IdleBranch implements Proving {
  @Override
  public String id() {
    return "idle-branch";
  }

  @Override
  public String means() {
    return "Every branch can be taken on some way through the procedure.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      Branch.Fork fork = step.fork();
      Paths.Node node = proof.nearest(step.id());
      if (fork == null || node == null || !proof.paths().whole()) {
        continue;
      }
      for (int i = 0; i < fork.branches().size(); i++) {
        Branch branch = fork.branches().get(i);
        boolean known = UnknownOutcome.unknown(proof, branch.when()).isEmpty();
        if (known && !proof.paths().taken(step.id(), i)) {
          found.add(
              this,
              branch.mark(),
              "nothing that can be so at " + step.id() + " takes this branch to " + branch.go(),
              "take it out, or mend what it waits for",
              proof.paths().way(node));
        }
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - choose: rod
          text: Is the rod nut open?
          options:
            - is: open
              label: Yes
              go: ask
            - is: covered
              label: No
              go: ask
        - choose: ask
          text: Is it a wheel?
          options:
            - is: wheel
              label: Yes
              go: fork
            - is: socket
              label: No
              go: fork
        - compute: fork
          calculation: response
          branches:
            - when: ask is wheel
              go: one
            - when: ask is socket
              go: other
            - when: rod is covered and rod is open
              go: one

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
        - choose: rod
          text: Is the rod nut open?
          options:
            - is: open
              label: Yes
              go: ask
            - is: covered
              label: No
              go: ask
        - choose: ask
          text: Is it a wheel?
          options:
            - is: wheel
              label: Yes
              go: fork
            - is: socket
              label: No
              go: fork
        - compute: fork
          calculation: response
          branches:
            - when: ask is wheel
              go: one
            - when: ask is socket
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
