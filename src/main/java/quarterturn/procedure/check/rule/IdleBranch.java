package quarterturn.procedure.check.rule;

import java.util.List;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Fan;

/** The rule that every branch can be taken. */
public final class IdleBranch {
  public static final Rule RULE =
      Rule.ofSteps(
          "idle-branch",
          "Every branch can be taken on some way through the procedure.",
          IdleBranch::prove);

  private IdleBranch() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean reached = !proof.paths().at(step.id()).isEmpty();
    if (!reached || !proof.paths().whole() || proof.lent(step)) {
      return;
    }
    List<Branch> branches = step.fork().branches();
    for (int i = 0; i < branches.size(); i++) {
      Branch branch = branches.get(i);
      boolean known = UnknownOutcome.unknown(proof, branch.when()).isEmpty();
      if (known && !proof.paths().taken(step.id(), i)) {
        found.add(
            branch.mark(),
            "nothing that can be so at " + step.id() + " takes this branch to " + branch.go(),
            "mend what it waits for, or what comes before it",
            proof.way(step));
      }
    }
    if (!branches.isEmpty()
        && step.fork().otherwise() != null
        && !proof.paths().taken(step.id(), Fan.REST)) {
      found.add(
          step.mark(),
          "one of the branches of " + step.id() + " always holds, so that otherwise is never taken",
          "mend the branch that holds always, or name each case",
          proof.way(step));
    }
  }
}
