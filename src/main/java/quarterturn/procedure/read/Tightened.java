package quarterturn.procedure.read;

import java.util.LinkedHashMap;
import java.util.Map;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.unit.Turn;

/**
 * Fits a procedure to a user's own limits: its turns get smaller, its rests longer. What is beyond
 * the limits that come with the program stays, so that the checker finds it.
 *
 * @param own the user's own limits
 * @param program those that the procedure was written for
 */
record Tightened(Limits own, Limits program) {
  Procedure of(Procedure procedure) {
    Map<String, Step> steps = new LinkedHashMap<>(procedure.steps());
    steps.replaceAll((id, step) -> step(step));
    return new Procedure(
        procedure.id(),
        procedure.revision(),
        procedure.title(),
        procedure.purpose(),
        procedure.tools(),
        procedure.begin(),
        procedure.retune(),
        procedure.reread(),
        steps,
        procedure.digest(),
        procedure.needs());
  }

  private Step step(Step step) {
    if (step instanceof Step.TurnRod turn) {
      return new Step.TurnRod(
          turn.id(),
          turn.words(),
          turn.mark(),
          amount(turn.amount()),
          smaller(turn.limit(), own.perReading(), program.perReading()),
          turn.felt());
    }
    if (step instanceof Step.Wait wait) {
      return new Step.Wait(
          wait.id(),
          wait.words(),
          wait.mark(),
          minutes(wait),
          wait.rest(),
          wait.establishes(),
          wait.meanwhile(),
          wait.go());
    }
    return step;
  }

  private Step.Amount amount(Step.Amount amount) {
    return amount instanceof Step.Amount.Fixed fixed
        ? new Step.Amount.Fixed(
            new Turn(
                Math.copySign(
                    smaller(fixed.turn().size(), own.firstMove(), program.firstMove()).turns(),
                    fixed.turn().turns())))
        : amount;
  }

  private static Turn smaller(Turn written, Turn own, Turn program) {
    return written.compareTo(program) <= 0 && written.compareTo(own) > 0 ? own : written;
  }

  private int minutes(Step.Wait wait) {
    if (wait.rest()) {
      return longer(wait.minutes(), own.restHours() * 60, program.restHours() * 60);
    }
    if (!wait.establishes().contains(Fact.SETTLED)) {
      return wait.minutes();
    }
    // A wait that outlasts the tuning would have to be followed by another, without end.
    int most = wait.minutes() <= program.readingHoldsMinutes() ? own.readingHoldsMinutes() : 0;
    int holding = most > 0 ? Math.min(wait.minutes(), most) : wait.minutes();
    return longer(holding, own.settleMinutes(), program.settleMinutes());
  }

  private static int longer(int written, int own, int program) {
    return written >= program ? Math.max(written, own) : written;
  }
}
