package quarterturn.procedure.check.rule;

import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.check.words.Act;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Subject;

/** The rule that what rests on a reading is not done where the reading could not be taken. */
public final class DoneBlind {
  public static final Rule RULE =
      Rule.ofSteps(
          "done-blind",
          "Where a reading can't be taken, no step comes next that sets a saddle or a pickup without it.",
          DoneBlind::prove);

  private static final Set<Act> SETTING =
      Set.of(Act.LOWER_SADDLE, Act.RAISE_SADDLE, Act.SET_PICKUP);

  private DoneBlind() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.Measure measure) {
      Set<Subject> reading = Set.of(new Subject.Reading(measure.quantity()));
      measure.then().branches().stream()
          .filter(branch -> branch.when().subjects().equals(reading))
          .filter(branch -> branch.when().holds(subject -> Cell.Standing.NOTHING))
          .flatMap(branch -> Ways.reach(proof.procedure(), branch.go(), DoneBlind::told).stream())
          .map(proof.procedure()::step)
          .filter(next -> proof.said(next).stream().anyMatch(DoneBlind::sets))
          .forEach(
              next ->
                  found.add(
                      next,
                      next.id() + " sets blind what " + measure.id() + " could not read",
                      "let such a way end, or lead to another reading"));
    }
  }

  private static boolean sets(Said said) {
    Act act = said.order().act();
    return act != null && SETTING.contains(act);
  }

  private static boolean told(Step step) {
    return step instanceof Step.Tell || step instanceof Step.Straight;
  }
}
