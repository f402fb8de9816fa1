package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Advice;
import quarterturn.craft.rod.Advisor;
import quarterturn.craft.rod.Decision;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Range;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Decides on every rod turn and keeps to the limits, whatever a procedure file says. Pure: the same
 * state at the same time gives the same ruling.
 */
record Guard(Limits limits, Advisor advisor) {
  /** A decision on a rod turn. */
  sealed interface Ruling {
    /** The turn may be made, as far as the advice says. */
    record Turns(Advice advice) implements Ruling {}

    /** A fresh reading has to be taken first. */
    record ReadFirst() implements Ruling {}

    /** The rod has to rest, since it has turned enough for a day. */
    record Rests(Instant until) implements Ruling {}

    /** The rod must not be turned: the instrument goes to a repairer. */
    record Stops(String outcome, String why) implements Ruling {}
  }

  /** The ruling on a turn step. */
  Ruling rule(State state, Step.TurnRod step, Kind kind, Window window, Instant now) {
    boolean back = state.pending().undoAsked() || step.amount() instanceof Step.Amount.Undo;
    Ruling stop = stopped(state, back);
    if (stop != null) {
      return stop;
    }
    Reading reading = fresh(state);
    Bracket bracket = reading == null ? null : reading.read().bracket();
    // By the last event's time, so that no turn is asked for on it and yet refused a second later.
    if (reading == null || bracket == null || state.history().old(reading.at(), state.last())) {
      return state.pending().putOff() < limits.putOff() || slow(state)
          ? new Ruling.ReadFirst()
          : fault("it asks for a turn without a fresh reading, taken at pitch after settling");
    }
    Ruling missing = missing(state);
    if (missing != null) {
      return missing;
    }
    if (restDue(state, now) && !slackens(state, back)) {
      return rests(state, now);
    }
    return amount(state, step, kind, window, bracket, now);
  }

  /**
   * The last relief reading if a turn may be based on it: lowest string, at pitch, settled, nothing
   * changed since; else null.
   */
  private static @Nullable Reading fresh(State state) {
    return state.bench().held(Quantity.RELIEF) == Freshness.FRESH
        ? state.history().last(Which.LOWEST)
        : null;
  }

  /**
   * Whether a reading has grown old, or tuning had when it was taken, more by the person's pace
   * than by the time that the procedure waits.
   */
  static boolean slow(State state) {
    Instant from = grewOld(state);
    if (from == null) {
      return false;
    }
    Duration waits = Duration.ZERO;
    for (Event event : state.log()) {
      if (event instanceof Event.WaitBegan wait && !wait.at().isBefore(from)) {
        waits = waits.plus(Duration.between(wait.at(), wait.until()));
      }
    }
    return waits.multipliedBy(2).compareTo(Duration.between(from, state.last())) < 0;
  }

  /** When what is too old now was done: the reading, or else the tuning before it; or null. */
  private static @Nullable Instant grewOld(State state) {
    Reading fresh = fresh(state);
    if (fresh != null) {
      return fresh.at();
    }
    Instant tuned = state.history().tuned();
    Reading last = state.history().last(Which.LOWEST);
    boolean late = last != null && tuned != null && state.history().old(tuned, last.at());
    return late ? tuned : null;
  }

  /**
   * What stops the work on the rod, or null.
   *
   * @param back whether a turn is to be taken back
   */
  private @Nullable Ruling stopped(State state, boolean back) {
    List<Carried.Stop> stops = state.history().others().stops();
    if (!stops.isEmpty()) {
      Carried.Stop stop = stops.get(0);
      return new Ruling.Stops(
          stop.outcome(),
          "In session "
              + stop.session()
              + " the work on the rod was stopped. "
              + stop.why()
              + " It is not turned again until a qualified repairer's finding is on record.");
    }
    List<TurnMade> turns = state.history().turns();
    for (TurnMade made : turns.subList(state.history().others().cleared(), turns.size())) {
      if (limits.stopFeels().contains(made.feel())) {
        return new Ruling.Stops(made.feel().word(), stopSign(made.feel()));
      }
    }
    if (back) {
      return null;
    }
    if (state.history().stiff() >= limits.stiffTurns()) {
      return new Ruling.Stops(
          "stiffer",
          "The truss rod nut felt stiff at "
              + state.history().stiff()
              + " turns running. It is near the end of its travel, or seizing. It is not turned"
              + " again.");
    }
    if (state.history().wrongWay() >= limits.wrongWayMoves()) {
      return new Ruling.Stops("wrong-way", "The neck has moved the wrong way more than once.");
    }
    int silent = state.history().times(Response.NO_ANSWER);
    if (silent >= (inSlack(state) ? limits.movesInSlack() : limits.movesWithoutAnswer())) {
      return new Ruling.Stops("no-response", "The neck has not answered the rod.");
    }
    if (state.history().touching() >= limits.movesWhileTouching()) {
      return new Ruling.Stops(
          "no-response",
          "The string still touches after " + state.history().touching() + " turns.");
    }
    return null;
  }

  static String stopSign(Feel felt) {
    String sign = felt.label().toLowerCase(Locale.ROOT);
    return "The rod gave a sign to stop: " + sign + ". It is not turned again.";
  }

  /**
   * Whether a turn is to be taken back that tightened: that much is safe though the day is spent.
   */
  private static boolean slackens(State state, boolean back) {
    TurnMade last = state.history().lastMoved();
    return back && last != null && last.turn().turns() > 0;
  }

  /** Whether a technician is crossing the slack of a two-way rod, whose nut turns freely in it. */
  private static boolean inSlack(State state) {
    TurnMade last = state.history().lastTurn();
    return state.started().role() == Role.TECHNICIAN
        && state.bench().has(Fact.ROD_TWO_WAY)
        && last != null
        && last.feel() == Feel.FREE
        && state.history().response() == Response.NO_ANSWER;
  }

  private static Advice across(boolean tighten, Turn most) {
    double size = Math.min(Turn.EIGHTH.turns(), most.turns());
    return new Advice(
        new Turn(tighten ? size : -size),
        "The nut turned freely, so the rod is in its slack. That is crossed by eighths, until the nut"
            + " first resists.");
  }

  private @Nullable Ruling missing(State state) {
    for (Fact need : limits.turnNeeds()) {
      if (!state.bench().has(need)) {
        return fault("it asks for a turn before it is established that " + need.meaning());
      }
    }
    return null;
  }

  private Ruling amount(
      State state, Step.TurnRod step, Kind kind, Window window, Bracket bracket, Instant now) {
    if (step.setsBack()) {
      return setBack(state, step, kind, window, now);
    }
    if (Verdict.of(bracket, window) == Verdict.UNDECIDED
        && Verdict.leaning(bracket, window) == Verdict.UNDECIDED) {
      return fault("it asks for a turn on a reading that does not tell which way to turn");
    }
    boolean tighten = bracket.middleMm() > window.middleMm();
    Turn most = most(state, step.limit(), tighten, now);
    Advice advice;
    if (state.pending().undoAsked() || step.amount() instanceof Step.Amount.Undo) {
      advice = undo(state);
      if (advice == null) {
        return fault("it asks to take a turn back where none was made");
      }
      if (advice.turn().turns() > 0 && !leftToday(state, now).atLeast(advice.turn().size())) {
        return rests(state, now);
      }
    } else {
      Decision.Reason fault = fault(state, kind, window);
      if (fault != null) {
        return new Ruling.Stops(fault.word(), fault.sentence());
      }
      advice =
          inSlack(state)
              ? across(tighten, most)
              : advisor.advise(question(state, kind, window, bracket, most));
      if (advice.turn().turns() == 0) {
        return fault("it asks for a turn where the reading needs none");
      }
      if (step.amount() instanceof Step.Amount.Fixed fixed) {
        if (fixed.turn().turns() * advice.turn().turns() <= 0) {
          return fault("it asks for a turn away from the range");
        }
        double size = Math.min(fixed.turn().size().turns(), most.turns());
        advice =
            new Advice(
                new Turn(Math.copySign(size, fixed.turn().turns())),
                advice.why(),
                advice.numbers());
      }
    }
    return allowed(state, advice);
  }

  /** The ruling on undoing the last turn that is left of those to be set back. */
  private Ruling setBack(State state, Step.TurnRod step, Kind kind, Window window, Instant now) {
    List<Turn> left = state.history().left();
    if (left.isEmpty()) {
      return fault("it asks to set a turn back where none is left");
    }
    Decision.Reason fault = fault(state, kind, window);
    if (fault != null) {
      return new Ruling.Stops(fault.word(), fault.sentence());
    }
    double last = left.get(left.size() - 1).turns();
    double most = most(state, step.limit(), last < 0, now).turns();
    Turn back = new Turn(Math.copySign(Math.min(Math.abs(last), most), -last));
    return allowed(state, new Advice(back, "It undoes what was turned the last time."));
  }

  private Ruling allowed(State state, Advice advice) {
    boolean tightens = advice.turn().turns() > 0;
    if (tightens && !state.bench().hasAll(limits.tightenNeeds())) {
      return fault("it asks to tighten the rod with the strings at full pitch");
    }
    if (beyond(state, advice.turn())) {
      return new Ruling.Stops(
          "limit",
          "The rod stands "
              + state.history().net()
              + " from where it was found, which is as far as this program goes.");
    }
    return new Ruling.Turns(advice);
  }

  /** Whether a turn takes the rod further from where it was found than the limit. */
  private boolean beyond(State state, Turn turn) {
    double reach = state.history().reach(turn.turns() > 0) + turn.size().turns();
    return reach > limits.fromAsFound().turns() + 1e-9;
  }

  /** The relief to expect after {@code turn}, or null where there is no fresh reading. */
  Prompt.@Nullable Expected expected(State state, Kind kind, Window window, Turn turn) {
    Reading reading = fresh(state);
    Bracket bracket = reading == null ? null : reading.read().bracket();
    if (bracket == null || turn.turns() == 0) {
      return null;
    }
    return expected(question(state, kind, window, bracket, turn.size()), turn);
  }

  private Prompt.Expected expected(Advisor.Question question, Turn turn) {
    Range range = advisor.expect(question, turn);
    return new Prompt.Expected(range.lowMm(), range.highMm());
  }

  /**
   * What the next turn should change, or null where there is no fresh reading, or no turn helps.
   */
  @Nullable Outlook outlook(State state, Kind kind, Window window, Instant now) {
    Advisor.Question question = next(state, kind, window, now);
    if (question == null) {
      return null;
    }
    Turn turn = advisor.advise(question).turn();
    return turn.turns() == 0
        ? null
        : new Outlook(
            turn,
            advisor.chance(question, Turn.NONE),
            advisor.chance(question, turn),
            expected(question, turn),
            state.bench().has(Fact.ROD_IDENTIFIED),
            restDue(state, now) ? limits.restHours() : 0,
            beyond(state, turn));
  }

  /** Whether the last reading, if it is fresh, asks for a turn. */
  boolean asksForTurn(State state, Kind kind, Window window, Instant now) {
    Advisor.Question question = next(state, kind, window, now);
    return question != null && advisor.advise(question).turn().turns() != 0;
  }

  private Advisor.@Nullable Question next(State state, Kind kind, Window window, Instant now) {
    Reading reading = fresh(state);
    Bracket bracket = reading == null ? null : reading.read().bracket();
    if (bracket == null) {
      return null;
    }
    boolean tighten = bracket.middleMm() > window.middleMm();
    Turn most = most(state, limits.perReading(), tighten, now);
    return question(state, kind, window, bracket, most);
  }

  private Advisor.Question question(
      State state, Kind kind, Window window, Bracket bracket, Turn most) {
    return new Advisor.Question(
        window, bracket, Known.of(kind.prior()), Story.of(state, limits), most);
  }

  /**
   * The reason in the readings against turning the rod again, or null; null too where it was never
   * turned.
   */
  Decision.@Nullable Reason fault(State state, Kind kind, Window window) {
    Reading reading = fresh(state);
    Bracket bracket = reading == null ? null : reading.read().bracket();
    if (bracket == null || state.history().turns().isEmpty()) {
      return null;
    }
    Decision.Reason fault =
        advisor.fault(question(state, kind, window, bracket, limits.perReading()));
    return fault == Decision.Reason.NO_RESPONSE && inSlack(state) ? null : fault;
  }

  private Ruling rests(State state, Instant now) {
    Instant last = state.history().lastTurnAt();
    Instant from = last == null || last.isAfter(now) ? now : last;
    return new Ruling.Rests(from.plus(limits.rest()));
  }

  /** Whether less is left for the day than a hand can turn. */
  private boolean restDue(State state, Instant now) {
    Turn hand = new Turn(Math.min(Turn.EIGHTH.turns(), limits.firstMove().turns()));
    return state.history().restDue(now) || !leftToday(state, now).atLeast(hand);
  }

  private Turn leftToday(State state, Instant now) {
    return new Turn(limits.beginnerDay().turns() - state.history().today(now).turns());
  }

  /**
   * The largest turn that is allowed now, or after the daily rest where that is due. The whole's
   * last room that is less than a hand can make is taken for that turn, which then does not fit in.
   */
  private Turn most(State state, Turn limit, boolean tighten, Instant now) {
    double most = Math.min(limit.turns(), limits.perReading().turns());
    SessionHistory history = state.history();
    boolean first = history.turns().isEmpty();
    boolean unknown = !history.known() && (first || history.touching() == 0);
    if (unknown || (first && history.jumped())) {
      most = Math.min(most, limits.firstMove().turns());
    }
    most = restDue(state, now) ? most : Math.min(most, leftToday(state, now).turns());
    double room = limits.fromAsFound().turns() - history.reach(tighten);
    return new Turn(Math.min(most, Math.max(Turn.EIGHTH.turns(), room)));
  }

  private @Nullable Advice undo(State state) {
    TurnMade last = state.history().lastMoved();
    if (last == null) {
      return null;
    }
    double size = Math.min(last.turn().size().turns(), limits.perReading().turns());
    Turn back = new Turn(Math.copySign(size, -last.turn().turns()));
    String why = "This takes the last turn back, exactly.";
    return new Advice(back, why);
  }

  private static Ruling fault(String what) {
    return new Ruling.Stops(
        "procedure-fault", "This procedure is at fault: " + what + ". Nothing more is turned.");
  }
}
