package quarterturn.command;

import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;

/** What is ordinarily answered: the first option, the turn as asked, the wait waited out. */
public final class OrdinaryAnswers {
  private OrdinaryAnswers() {}

  /**
   * The answer to what is asked.
   *
   * @param gap what is read where a gap is asked for
   */
  public static Answer to(Bench bench, Bracket gap) throws RefusedException {
    Prompt prompt = bench.prompt();
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    } else if (prompt instanceof Prompt.Measure measure) {
      return measure.quantity().bracket() ? new Answer.Measured(gap) : new Answer.Value(50);
    } else if (prompt instanceof Prompt.TurnRod turn) {
      return new Answer.Turned(turn.turn(), Feel.SMOOTH);
    } else if (prompt instanceof Prompt.Wait wait) {
      bench.setClock(wait.until().isAfter(bench.now()) ? wait.until() : bench.now());
      return new Answer.Waited(null);
    }
    return prompt instanceof Prompt.Write ? new Answer.Wrote("-") : new Answer.Confirmed();
  }
}
