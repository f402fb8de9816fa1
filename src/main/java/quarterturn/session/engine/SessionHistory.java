package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Changed;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Prompt;
import quarterturn.session.TurnsLeft;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * What was read, turned and changed in a session, and what follows from it.
 *
 * @param limits the limits policy
 * @param others what is known of the neck from other sessions
 * @param readings every reading, oldest first
 * @param turns every turn of the rod, oldest first
 * @param changes changes made to the instrument, rod turns included
 * @param given verdicts that were given, each with the number of changes made before it
 * @param tuned when the strings were last brought to pitch, or null
 * @param lifted the last time the daily rest was lifted, or null
 * @param spoiled how many readings, the oldest ones, something other than a turn has spoiled
 */
record SessionHistory(
    Limits limits,
    OtherSessions others,
    Reading.All readings,
    List<TurnMade> turns,
    List<Changed> changes,
    Map<String, Integer> given,
    @Nullable Instant tuned,
    @Nullable Lifted lifted,
    int spoiled) {
  private static final double SLACK = 1e-6;

  /**
   * The daily rest was ended early, with a reason.
   *
   * @param turns how many rod turns had been made in this session before
   */
  record Lifted(Instant at, int turns) {}

  static SessionHistory of(Event.Started started, Limits limits) {
    OtherSessions others = OtherSessions.of(started);
    return new SessionHistory(
        limits, others, Reading.All.NONE, List.of(), List.of(), Map.of(), null, null, 0);
  }

  SessionHistory read(Event.Read read, boolean counts) {
    Reading reading = new Reading(read, counts, turns.size(), changes.size());
    Reading.All now = readings.and(reading);
    return new SessionHistory(limits, others, now, turns, changes, given, tuned, lifted, spoiled);
  }

  SessionHistory turned(TurnMade made) {
    List<TurnMade> now = Lists.with(turns, made);
    return new SessionHistory(
        limits, others, readings, now, changes, given, tuned, lifted, spoiled);
  }

  /** This history with a change made to the instrument; unchanged for null. */
  SessionHistory changed(Instant at, @Nullable String change) {
    return change == null ? this : changed(new Changed(at, change));
  }

  SessionHistory changed(Changed change) {
    List<Changed> now = Lists.with(changes, change);
    return new SessionHistory(limits, others, readings, turns, now, given, tuned, lifted, spoiled);
  }

  SessionHistory gave(String result) {
    Map<String, Integer> now = Lists.with(given, result, changes.size());
    return new SessionHistory(
        limits, others, readings, turns, changes, now, tuned, lifted, spoiled);
  }

  SessionHistory tuned(Instant at) {
    return new SessionHistory(limits, others, readings, turns, changes, given, at, lifted, spoiled);
  }

  SessionHistory lifted(Instant at) {
    Lifted now = new Lifted(at, turns.size());
    return new SessionHistory(limits, others, readings, turns, changes, given, tuned, now, spoiled);
  }

  /** This history with every reading so far spoiled. */
  SessionHistory allSpoiled() {
    int all = readings.size();
    return new SessionHistory(limits, others, readings, turns, changes, given, tuned, lifted, all);
  }

  /**
   * This history with turns made in other sessions. Later readings show those turns too, so that
   * nothing is learned of this session's last turn.
   */
  SessionHistory resumed(Event.Resumed resumed) {
    OtherSessions now = others.resumed(resumed, turns.size());
    List<TurnMade> made = new ArrayList<>(turns);
    if (now.elsewhere().size() > others.elsewhere().size() && !made.isEmpty()) {
      made.add(made.remove(made.size() - 1).unsure());
    }
    return new SessionHistory(
        limits, now, readings, List.copyOf(made), changes, given, tuned, lifted, spoiled);
  }

  /** This history, of which nothing was done later than {@code known}, whatever a clock showed. */
  SessionHistory by(Instant known) {
    Lifted early = lifted == null ? null : new Lifted(sooner(lifted.at(), known), lifted.turns());
    return new SessionHistory(
        limits,
        others,
        readings,
        turns.stream().map(made -> made.by(known)).toList(),
        changes,
        given,
        tuned == null ? null : sooner(tuned, known),
        early,
        spoiled);
  }

  private static Instant sooner(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }

  /** The rod's position from as found, plus is tighter, with the turns of every session. */
  Turn net() {
    double sum = others.net();
    for (TurnMade made : turns.subList(others.cleared(), turns.size())) {
      sum += made.turn().turns();
    }
    return new Turn(sum);
  }

  /** The turns of the last lesson or session that are not set back yet, the oldest first. */
  List<Turn> left() {
    TurnsLeft left = new TurnsLeft();
    others.lastTime().forEach(past -> left.then(past.turn(), past.before() != null));
    if (others.since() != null) {
      turns.forEach(made -> left.then(made.turn(), made.sure()));
    }
    return left.turns();
  }

  /** How far from as found the rod may stand one way, in turns; below zero where it can't. */
  double reach(boolean tighter) {
    return (tighter ? net().turns() : -net().turns()) + others.maybe(tighter);
  }

  /**
   * Turns in the day before {@code now}, added up without direction, since the daily rest was last
   * ended early. Turns are counted by their place before or after that, since it and the next turn
   * may be in the same second.
   */
  Turn today(Instant now) {
    Instant since = now.minus(limits.day());
    double sum = 0;
    for (Event.Past past : others.after(since)) {
      sum += lifted == null || past.when().isAfter(lifted.at()) ? past.moved() : 0;
    }
    for (TurnMade made : turns.subList(lifted == null ? 0 : lifted.turns(), turns.size())) {
      sum += made.at().isAfter(since) ? Event.Past.moved(made.turn(), made.freed()) : 0;
    }
    boolean unknown = others.spentAfter(lifted == null ? since : later(since, lifted.at()));
    return unknown ? new Turn(Math.max(sum, limits.beginnerDay().turns())) : new Turn(sum);
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }

  /** The time of the last turn in any session, or null. */
  @Nullable Instant lastTurnAt() {
    Instant elsewhere = others.last();
    TurnMade own = lastTurn();
    if (own == null || elsewhere == null) {
      return own == null ? elsewhere : own.at();
    }
    return later(own.at(), elsewhere);
  }

  /** This session's last turn, or null. */
  @Nullable TurnMade lastTurn() {
    return turns.isEmpty() ? null : turns.get(turns.size() - 1);
  }

  /** This session's last turn in which the rod moved, or null. */
  @Nullable TurnMade lastMoved() {
    return Lists.last(turns, made -> made.turn().turns() != 0);
  }

  /**
   * How far a nut is first turned back and to its mark again, to free it: one that is tightened and
   * has no turn on record; else null.
   */
  @Nullable Turn freed(Turn turn) {
    boolean first = turns.isEmpty() && !others.turned();
    return first && turn.turns() > 0 ? limits.freeFirst() : null;
  }

  /** How many of the last turns in a row felt stiff, since a repairer's finding. */
  int stiff() {
    int count = 0;
    for (int i = turns.size() - 1;
        i >= others.cleared() && turns.get(i).feel() == Feel.STIFF;
        i--) {
      count++;
    }
    return count;
  }

  /** The last relief reading on a string, whether it counts or not, or null. */
  @Nullable Reading last(Which which) {
    return Lists.last(readings.on(Quantity.RELIEF, which), Reading::relief);
  }

  /** The last reading of a quantity, or null. */
  @Nullable Reading last(Quantity quantity) {
    return Lists.last(readings.of(quantity), r -> true);
  }

  /**
   * The changes made to the instrument after a number of changes.
   *
   * @param before how many changes to skip
   */
  List<Changed> changesSince(int before) {
    return changes.subList(before, changes.size());
  }

  /** Of these, those that concern a string, or any string for null. */
  List<Changed> changesSince(int before, @Nullable String string) {
    return changesSince(before).stream().filter(change -> change.concerns(string)).toList();
  }

  /**
   * Whether tuning or a reading at {@code from} is too old to be used at {@code now}; nobody knows
   * where that is earlier, since a clock was wrong.
   */
  boolean old(Instant from, Instant now) {
    return from.isAfter(now)
        || from.plus(Duration.ofMinutes(limits.readingHoldsMinutes())).isBefore(now);
  }

  /** Whether tuning is recent enough for a reading at {@code now}. */
  boolean timely(Instant now) {
    return tuned != null && !old(tuned, now);
  }

  /** The last counting relief reading taken after {@code turns} turns, or null. */
  private @Nullable Bracket at(int turns) {
    List<Reading> lowest = readings.on(Quantity.RELIEF, Which.LOWEST);
    int from = firstAfter(lowest, turns - 1);
    List<Reading> then = lowest.subList(from, firstAfter(lowest, turns));
    Reading last = Lists.last(then, r -> r.relief() && r.counts());
    return last == null ? null : last.read().bracket();
  }

  /** Index of the first reading that was taken after more than {@code turns} turns. */
  private static int firstAfter(List<Reading> readings, int turns) {
    int low = 0;
    int high = readings.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (readings.get(middle).turnsBefore() > turns) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * Whether the relief, as first read in this session, is far from where the last session's turns
   * left it: something was done to the neck in between, or the weather was.
   */
  boolean jumped() {
    Event.Past last = Lists.last(others.earlier(), past -> true);
    Bracket left = last == null ? null : last.after();
    Bracket found = at(0);
    return left != null
        && found != null
        && Math.abs(left.middleMm() - found.middleMm()) > limits.jumpMm() + SLACK;
  }

  /**
   * Millimetres by which this session's turns have moved the relief, minus where it is less now.
   */
  double movedMm() {
    Bracket found = at(0);
    Bracket now = at(turns.size());
    return found == null || now == null ? 0 : now.middleMm() - found.middleMm();
  }

  /** Whether the neck has ever been seen to answer its rod. */
  boolean known() {
    for (Event.Past past : others.all()) {
      if (answer(past.turn(), past.before(), past.after()) == Response.MOVED) {
        return true;
      }
    }
    for (int i = 0; i < turns.size(); i++) {
      TurnMade made = turns.get(i);
      if (made.sure() && answer(made.turn(), at(i), at(i + 1)) == Response.MOVED) {
        return true;
      }
    }
    return false;
  }

  /**
   * What the relief was expected to be after the last turn, where a reading of the lowest string is
   * far from that; else null. Null too where nobody knows how far it was turned, or where something
   * else was changed since.
   */
  Prompt.@Nullable Expected farFrom(Bracket bracket) {
    TurnMade made = lastTurn();
    Prompt.Expected expected = made == null || !made.sure() ? null : made.expected();
    if (made == null
        || expected == null
        || changes.stream().anyMatch(change -> change.at().isAfter(made.at()))) {
      return null;
    }
    double off = Math.max(bracket.lowMm() - expected.highMm(), expected.lowMm() - bracket.highMm());
    return off > limits.answers().farMm() + SLACK ? expected : null;
  }

  /** How the neck answered the last turn. */
  Response response() {
    if (turns.isEmpty()) {
      return Response.NOT_TURNED;
    }
    return responseTo(turns.size() - 1);
  }

  /**
   * How the neck answered a turn. Earlier turns in the same direction without an answer are added,
   * since small turns add up until an answer can be expected.
   */
  private Response responseTo(int index) {
    if (takesUpSlack(index)) {
      return Response.UNSEEN;
    }
    double sum = 0;
    Response found = Response.UNSEEN;
    for (int i = index; i >= 0; i--) {
      TurnMade made = turns.get(i);
      boolean sameWay = made.turn().turns() * turns.get(index).turn().turns() > 0;
      if (!made.sure() || !sameWay || (i < index && responseTo(i) == Response.MOVED)) {
        break;
      }
      sum += made.turn().turns();
      found = answer(new Turn(sum), at(i), at(index + 1));
      if (found == Response.MOVED || found == Response.WRONG_WAY) {
        return found;
      }
    }
    return found;
  }

  /**
   * Whether a tightening did no more than take up slack that was let out before: the rod stands no
   * tighter after it than where an earlier loosening began, which felt free and had no answer.
   */
  private boolean takesUpSlack(int index) {
    if (turns.get(index).turn().turns() <= 0) {
      return false;
    }
    double after = 0;
    for (TurnMade made : turns.subList(0, index + 1)) {
      after += made.turn().turns();
    }
    double at = 0;
    double slackFrom = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < index; i++) {
      TurnMade made = turns.get(i);
      if (made.feel() == Feel.FREE && made.turn().turns() < 0) {
        Response found = responseTo(i);
        boolean silent = found == Response.NO_ANSWER || found == Response.UNSEEN;
        slackFrom = silent ? Math.max(slackFrom, at) : slackFrom;
      }
      at += made.turn().turns();
    }
    return after <= slackFrom + SLACK;
  }

  private Response answer(Turn turn, @Nullable Bracket before, @Nullable Bracket after) {
    if (before == null || after == null || turn.turns() == 0) {
      return Response.UNSEEN;
    }
    if (!before.bounded() || !after.bounded()) {
      return answerAtLeast(turn, before, after);
    }
    double change = before.middleMm() - after.middleMm();
    double asTold = turn.turns() > 0 ? change : -change;
    if (asTold >= limits.answers().seenMm() - SLACK) {
      return Response.MOVED;
    }
    if (most(turn, before, after) <= SLACK - limits.answers().wrongMm()) {
      return Response.WRONG_WAY;
    }
    return turn.size().atLeast(limits.answers().expectedFrom())
        ? Response.NO_ANSWER
        : Response.UNSEEN;
  }

  /** The largest movement in the expected direction that two readings allow. */
  private static double most(Turn turn, Bracket before, Bracket after) {
    return turn.turns() > 0 ? before.highMm() - after.lowMm() : after.highMm() - before.lowMm();
  }

  /** How the neck surely answered, where a bracket is open and only the least movement is known. */
  private Response answerAtLeast(Turn turn, Bracket before, Bracket after) {
    double least =
        turn.turns() > 0 ? before.lowMm() - after.highMm() : after.lowMm() - before.highMm();
    if (least >= limits.answers().seenMm() - SLACK) {
      return Response.MOVED;
    }
    return most(turn, before, after) <= SLACK - limits.answers().wrongMm()
        ? Response.WRONG_WAY
        : Response.UNSEEN;
  }

  /**
   * How many turns moved the neck in the wrong direction, with those in earlier sessions since it
   * last answered.
   */
  int wrongWay() {
    int count = 0;
    boolean answered = false;
    for (int i = 0; i < turns.size(); i++) {
      count += responseTo(i) == Response.WRONG_WAY ? 1 : 0;
      answered |= responseTo(i) == Response.MOVED;
    }
    return answered ? count : count + before(Response.WRONG_WAY, Response.UNSEEN);
  }

  /**
   * How many of the last turns in earlier sessions had an answer, counted back to the first with an
   * answer other than that and {@code passed}.
   */
  private int before(Response wanted, Response passed) {
    int count = 0;
    List<Event.Past> before = others.judged();
    for (int i = before.size() - 1; i >= 0; i--) {
      Event.Past past = before.get(i);
      Response response = answer(past.turn(), past.before(), past.after());
      if (response != wanted && response != passed) {
        break;
      }
      count += response == wanted ? 1 : 0;
    }
    return count;
  }

  /** How many of the last turns in a row, earlier sessions included, left the string touching. */
  int touching() {
    int count = 0;
    for (int i = turns.size() - 1; i >= 0; i--) {
      if (!touches(at(i), at(i + 1))) {
        return count;
      }
      count++;
    }
    List<Event.Past> before = others.judged();
    for (int i = before.size() - 1; i >= 0; i--) {
      if (!touches(before.get(i).before(), before.get(i).after())) {
        return count;
      }
      count++;
    }
    return count;
  }

  private static boolean touches(@Nullable Bracket before, @Nullable Bracket after) {
    return before != null && after != null && before.noGap() && after.noGap();
  }

  private int trailing(Response wanted) {
    int count = 0;
    for (int i = turns.size() - 1; i >= 0 && responseTo(i) == wanted; i--) {
      count++;
    }
    return count == turns.size() ? count + before(wanted, wanted) : count;
  }

  /** How many times the neck has answered in a way, for a condition that counts. */
  int times(Response response) {
    return switch (response) {
      case NOT_TURNED -> turns.isEmpty() ? 1 : 0;
      case WRONG_WAY -> response() == Response.WRONG_WAY ? wrongWay() : 0;
      case UNSEEN -> response() == Response.UNSEEN ? Math.max(1, touching()) : 0;
      default -> trailing(response);
    };
  }

  /** Whether the daily rest is due: less than the smallest turn is left for the day. */
  boolean restDue(Instant now) {
    double left = limits.beginnerDay().turns() - today(now).turns();
    return left < Turn.SIXTEENTH.turns() - SLACK;
  }
}
