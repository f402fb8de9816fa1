package quarterturn.procedure.check;

import quarterturn.procedure.Cell;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Step;
import quarterturn.unit.Turn;

/** No limit lies above policy. */
final class OverLimit implements Proving {
  @Override
  public String id() {
    return "over-limit";
  }

  @Override
  public String means() {
    return "No turn, rest, settling or count goes beyond safety/limits.yaml.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    Limits limits = proof.limits();
    for (Step step : proof.steps().values()) {
      if (step instanceof Step.TurnRod turn) {
        most(found, turn.mark(), "a turn of " + turn.limit(), turn.limit(), limits.perReading());
        if (turn.amount() instanceof Step.Amount.Fixed fixed) {
          Turn size = fixed.turn().size();
          most(found, turn.mark(), "a first turn of " + size, size, limits.firstMove());
        }
      } else if (step instanceof Step.Wait wait) {
        wait(found, wait, limits);
      }
      for (Condition condition : Frame.conditions(step)) {
        condition.atoms().forEach(atom -> condition(found, step.mark(), atom, limits));
      }
    }
  }

  private void most(Findings found, Mark mark, String what, Turn turn, Turn most) {
    if (turn.turns() > most.turns() + Cell.SLACK) {
      found.add(this, mark, what + " is above the limit of " + most, "at most " + most);
    }
  }

  private void wait(Findings found, Step.Wait wait, Limits limits) {
    if (wait.rest() && wait.minutes() < limits.restHours() * 60) {
      found.add(
          this,
          wait.mark(),
          "the rest " + wait.id() + " is too short",
          "at least " + limits.restHours() + " h");
    }
    if (wait.establishes().contains(Fact.SETTLED) && wait.minutes() < limits.settleMinutes()) {
      found.add(
          this,
          wait.mark(),
          "the neck has not settled after " + wait.id(),
          "at least " + limits.settleMinutes() + " min");
    }
  }

  private void condition(Findings found, Mark mark, Condition atom, Limits limits) {
    if (atom instanceof Condition.Turned turned) {
      boolean today = turned.span() == Condition.Span.TODAY;
      String what = "a question for " + turned.least() + " " + turned.span().words();
      most(found, mark, what, turned.least(), today ? limits.beginnerDay() : limits.fromAsFound());
    } else if (atom instanceof Condition.Answered answered) {
      int most =
          switch (answered.response()) {
            case NO_ANSWER -> limits.movesWithoutAnswer();
            case WRONG_WAY -> limits.wrongWayMoves();
            case UNSEEN -> limits.movesWhileTouching();
            case NOT_TURNED, MOVED -> Integer.MAX_VALUE;
          };
      if (answered.times() > most) {
        found.add(
            this,
            mark,
            "neck "
                + answered.response().words()
                + " "
                + answered.times()
                + " times is more than may be turned",
            "at most " + most + " times");
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
        - wait: rest
          text: Let the rod rest for {minutes}.
          for: 24 h
          rest: true
          go: tune
        """,
        """
        - wait: rest
          text: Let the rod rest for {minutes}.
          for: 12 h
          rest: true
          go: tune
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
        - wait: rest
          text: Let the rod rest for {minutes}.
          for: 24 h
          rest: true
          go: tune
        """);
  }
}
