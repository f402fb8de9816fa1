package quarterturn.procedure.check;

import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;

/** Every branch can be taken. */
final class IdleBranch {
  static final Rule RULE =
      new Rule(
          "idle-branch",
          "Every branch can be taken on some way through the procedure.",
          IdleBranch::prove);

  private IdleBranch() {}

  private static void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      Branch.Fork fork = step.fork();
      boolean reached = !proof.paths().at(step.id()).isEmpty();
      if (fork == null || !reached || !proof.paths().whole()) {
        continue;
      }
      for (int i = 0; i < fork.branches().size(); i++) {
        Branch branch = fork.branches().get(i);
        boolean known = UnknownOutcome.unknown(proof, branch.when()).isEmpty();
        if (known && !proof.paths().taken(step.id(), i)) {
          found.add(
              branch.mark(),
              "nothing that can be so at " + step.id() + " takes this branch to " + branch.go(),
              "take it out, or mend what it waits for",
              proof.way(step));
        }
      }
    }
  }
}
