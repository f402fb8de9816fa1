package quarterturn.procedure.check.rule;

import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Domain;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.condition.Subject;

/** The rule that every way can be walked: a procedure too wide to be proven is reported. */
public final class CannotProve {
  public static final Rule RULE =
      new Rule(
          "cannot-prove",
          "Every way can be walked; what is too wide to be proven is never passed over in silence.",
          CannotProve::prove);

  private CannotProve() {}

  private static void prove(Proof proof, Findings found) {
    Reachability paths = proof.paths();
    Step begin = proof.procedure().step(proof.procedure().begin());
    if (!paths.whole()) {
      found.add(
          begin,
          "there are more ways through this procedure than can be walked, so nothing is proven",
          "split it into procedures that call each other, or let later steps ask about less");
    }
    for (Subject subject : paths.frame().tooMany()) {
      found.add(
          begin,
          "conditions tell apart more than "
              + Domain.MOST
              + " cases of one thing: "
              + subject.words(),
          "ask about fewer of its answers by themselves");
    }
    for (Reachability.Wanting fork : paths.wanting()) {
      if (!fork.spread().whole()) {
        found.add(
            fork.node(),
            "the branches of " + fork.node().step().id() + " ask about too many things at once",
            "ask about one thing a step");
      }
    }
  }
}
