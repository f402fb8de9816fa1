package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Frame;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Role;
import quarterturn.unit.Turn;

/** The rule that no limit of a turn lies above policy. */
public final class OverLimit {
  public static final Rule RULE =
      Rule.ofSteps(
          "over-limit",
          "No turn, rest, settling or count goes beyond safety/limits.yaml, and no rule of your own is"
              + " laxer.",
          OverLimit::prove);

  private OverLimit() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Limits limits = proof.limits();
    if (step instanceof Step.TurnRod turn) {
      most(found, turn, "a turn of " + turn.limit(), turn.limit(), limits.perReading());
      if (turn.amount() instanceof Step.Amount.Fixed fixed) {
        Turn size = fixed.turn().size();
        most(found, turn, "a first turn of " + size, size, limits.firstMove());
      }
    }
    if (step instanceof Step.Wait wait) {
      wait(found, wait, limits);
    }
    for (Condition condition : Frame.conditions(step)) {
      boolean technician = condition.atoms().anyMatch(new Condition.Is(Role.TECHNICIAN)::equals);
      condition.atoms().forEach(atom -> condition(found, step, atom, technician, limits));
    }
  }

  private static void most(Findings found, Step step, String what, Turn turn, Turn most) {
    if (turn.turns() > most.turns() + Cell.SLACK) {
      found.add(step, what + " is above the limit of " + most, "at most " + most);
    }
  }

  private static void wait(Findings found, Step.Wait wait, Limits limits) {
    if (wait.rest() && wait.minutes() < limits.restHours() * 60) {
      found.add(
          wait, "the rest " + wait.id() + " is too short", "at least " + limits.restHours() + " h");
    }
    if (wait.establishes().contains(Fact.SETTLED) && wait.minutes() < limits.settleMinutes()) {
      found.add(
          wait,
          "the neck has not settled after " + wait.id(),
          "at least " + limits.settleMinutes() + " min");
    }
  }

  private static void condition(
      Findings found, Step step, Condition atom, boolean technician, Limits limits) {
    if (atom instanceof Condition.Turned turned) {
      boolean today = turned.span() == Condition.Span.TODAY;
      String what = "a question for " + turned.least() + " " + turned.span().words();
      most(found, step, what, turned.least(), today ? limits.beginnerDay() : limits.fromAsFound());
    }
    if (atom instanceof Condition.Answered answered) {
      int most =
          switch (answered.response()) {
            case NO_ANSWER -> technician ? limits.movesInSlack() : limits.movesWithoutAnswer();
            case WRONG_WAY -> limits.wrongWayMoves();
            case UNSEEN -> limits.movesWhileTouching();
            case NOT_TURNED, MOVED -> Integer.MAX_VALUE;
          };
      if (answered.times() > most) {
        found.add(
            step,
            "neck "
                + answered.response().words()
                + " "
                + answered.times()
                + " times is more than may be turned",
            "at most " + most + " times");
      }
    }
  }
}
