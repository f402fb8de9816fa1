package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Response;
import quarterturn.procedure.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What a session's readings and turns add up to. Pure functions of the state. */
final class Account {
  private static final double SLACK = 1e-6;

  private Account() {}

  /** This neck's turns in other sessions, those before this one began first. */
  private static List<Event.Past> others(State state) {
    List<Event.Past> others = new ArrayList<>(state.started.past());
    others.addAll(state.elsewhere);
    return others;
  }

  /** Where the rod stands from as found, plus is tighter, whichever session turned it since. */
  static Turn net(State state) {
    double sum = 0;
    for (Event.Past past : state.elsewhere) {
      sum += past.turn().turns();
    }
    for (TurnMade made : state.turns) {
      sum += made.turn().turns();
    }
    return new Turn(sum);
  }

  /**
   * All turning in a day before {@code now}, either way added up, since the last lifting. What was
   * turned before a lifting goes by its place among the turns, since a lifting and the turn after
   * it may be in one second.
   */
  static Turn today(State state, Limits limits, Instant now) {
    Instant since = now.minus(limits.day());
    State.Lifted lifted = state.lifted;
    double sum = 0;
    for (Event.Past past : others(state)) {
      boolean counts = lifted == null || past.at().isAfter(lifted.at());
      sum += counts && past.at().isAfter(since) ? past.turn().size().turns() : 0;
    }
    for (TurnMade made :
        state.turns.subList(lifted == null ? 0 : lifted.turns(), state.turns.size())) {
      sum += made.at().isAfter(since) ? made.turn().size().turns() : 0;
    }
    return new Turn(sum);
  }

  /** When the rod was last turned, earlier sessions included, or null. */
  static @Nullable Instant lastTurnAt(State state) {
    List<Instant> times = new ArrayList<>();
    others(state).forEach(past -> times.add(past.at()));
    state.turns.forEach(made -> times.add(made.at()));
    return times.stream().max(Comparator.naturalOrder()).orElse(null);
  }

  /** This session's last turn in which the rod moved, or null. */
  static @Nullable TurnMade lastMoved(State state) {
    for (int i = state.turns.size() - 1; i >= 0; i--) {
      if (state.turns.get(i).turn().turns() != 0) {
        return state.turns.get(i);
      }
    }
    return null;
  }

  /** The last relief reading on a string, counting or not, or null. */
  static @Nullable Reading last(State state, Which which) {
    for (int i = state.readings.size() - 1; i >= 0; i--) {
      Reading reading = state.readings.get(i);
      if (reading.relief() && reading.read().which() == which) {
        return reading;
      }
    }
    return null;
  }

  /** The last reading of a quantity, or null. */
  static @Nullable Reading last(State state, Quantity quantity) {
    for (int i = state.readings.size() - 1; i >= 0; i--) {
      if (state.readings.get(i).read().quantity() == quantity) {
        return state.readings.get(i);
      }
    }
    return null;
  }

  /** The reading a turn may rest on: lowest string, at pitch, settled, nothing changed since. */
  static @Nullable Reading fresh(State state) {
    Reading reading = last(state, Which.LOWEST);
    boolean fresh =
        reading != null
            && reading.counts()
            && !reading.stale()
            && reading.turnsBefore() == state.turns.size();
    return fresh ? reading : null;
  }

  /** Whether tuning or a reading at {@code from} is too long ago to be used at {@code now}. */
  static boolean old(Limits limits, Instant from, Instant now) {
    return from.plus(Duration.ofMinutes(limits.readingHoldsMinutes())).isBefore(now);
  }

  /** Whether a reading taken now would count: strings at pitch, not too long ago, and settled. */
  static boolean ready(State state, Limits limits, Instant now) {
    return state.facts.contains(Fact.AT_PITCH)
        && state.facts.contains(Fact.SETTLED)
        && state.atPitchSince != null
        && !old(limits, state.atPitchSince, now);
  }

  /** The last counting reading taken when {@code turns} turns had been made, or null. */
  private static @Nullable Bracket at(State state, int turns) {
    Bracket found = null;
    for (Reading reading : state.readings) {
      boolean lowest = reading.relief() && reading.read().which() == Which.LOWEST;
      if (lowest && reading.counts() && reading.turnsBefore() == turns) {
        found = reading.read().bracket();
      }
    }
    return found;
  }

  /** Whether this neck was ever seen to answer as told. */
  static boolean known(State state, Limits limits) {
    for (Event.Past past : others(state)) {
      if (answer(limits, past.turn(), past.before(), past.after()) == Response.MOVED) {
        return true;
      }
    }
    for (int i = 0; i < state.turns.size(); i++) {
      TurnMade made = state.turns.get(i);
      if (made.sure()
          && answer(limits, made.turn(), at(state, i), at(state, i + 1)) == Response.MOVED) {
        return true;
      }
    }
    return false;
  }

  /** What the neck did after the last turn. */
  static Response response(State state, Limits limits) {
    if (state.turns.isEmpty()) {
      return Response.NOT_TURNED;
    }
    return responseTo(state, limits, state.turns.size() - 1);
  }

  /**
   * What the neck did after a turn, looking back over the run of turns the same way before it that
   * showed no answer either: small turns add up until an answer can be expected.
   */
  private static Response responseTo(State state, Limits limits, int index) {
    double sum = 0;
    Response found = Response.UNSEEN;
    for (int i = index; i >= 0; i--) {
      TurnMade made = state.turns.get(i);
      boolean sameWay = made.turn().turns() * state.turns.get(index).turn().turns() > 0;
      if (!made.sure()
          || !sameWay
          || (i < index && responseTo(state, limits, i) == Response.MOVED)) {
        break;
      }
      sum += made.turn().turns();
      found = answer(limits, new Turn(sum), at(state, i), at(state, index + 1));
      if (found == Response.MOVED || found == Response.WRONG_WAY) {
        return found;
      }
    }
    return found;
  }

  private static Response answer(
      Limits limits, Turn turn, @Nullable Bracket before, @Nullable Bracket after) {
    if (before == null || after == null || turn.turns() == 0) {
      return Response.UNSEEN;
    }
    Limits.Answers answers = limits.answers();
    if (!before.bounded() || !after.bounded()) {
      return answerAtLeast(answers, turn, before, after);
    }
    double change = before.middleMm() - after.middleMm();
    double asTold = turn.turns() > 0 ? change : -change;
    if (asTold >= answers.seenMm() - SLACK) {
      return Response.MOVED;
    }
    if (most(turn, before, after) <= SLACK - answers.wrongMm()) {
      return Response.WRONG_WAY;
    }
    return turn.size().atLeast(answers.expectedFrom()) ? Response.NO_ANSWER : Response.UNSEEN;
  }

  /** The most that a neck can have moved as told. */
  private static double most(Turn turn, Bracket before, Bracket after) {
    return turn.turns() > 0 ? before.highMm() - after.lowMm() : after.highMm() - before.lowMm();
  }

  /** Where an end of a bracket is unknown, only what holds for the whole of it was seen. */
  private static Response answerAtLeast(
      Limits.Answers answers, Turn turn, Bracket before, Bracket after) {
    double least =
        turn.turns() > 0 ? before.lowMm() - after.highMm() : after.lowMm() - before.highMm();
    if (least >= answers.seenMm() - SLACK) {
      return Response.MOVED;
    }
    return most(turn, before, after) <= SLACK - answers.wrongMm()
        ? Response.WRONG_WAY
        : Response.UNSEEN;
  }

  /** How many turns in a row, up to the last, showed no answer under a readable gap. */
  static int unanswered(State state, Limits limits) {
    return trailing(state, limits, Response.NO_ANSWER);
  }

  /** How many turns moved the neck the wrong way, in all. */
  static int wrongWay(State state, Limits limits) {
    int count = 0;
    for (int i = 0; i < state.turns.size(); i++) {
      count += responseTo(state, limits, i) == Response.WRONG_WAY ? 1 : 0;
    }
    return count;
  }

  /** How many turns in a row, up to the last, left the string touching as before. */
  static int touching(State state) {
    int count = 0;
    for (int i = state.turns.size() - 1; i >= 0; i--) {
      Bracket before = at(state, i);
      Bracket after = at(state, i + 1);
      if (before == null || after == null || !before.noGap() || !after.noGap()) {
        break;
      }
      count++;
    }
    return count;
  }

  private static int trailing(State state, Limits limits, Response wanted) {
    int count = 0;
    for (int i = state.turns.size() - 1; i >= 0 && responseTo(state, limits, i) == wanted; i--) {
      count++;
    }
    return count;
  }

  /** How often the neck has responded so, for a condition that counts. */
  static int times(State state, Limits limits, Response response) {
    return switch (response) {
      case NOT_TURNED -> state.turns.isEmpty() ? 1 : 0;
      case WRONG_WAY -> response(state, limits) == Response.WRONG_WAY ? wrongWay(state, limits) : 0;
      case UNSEEN -> response(state, limits) == Response.UNSEEN ? Math.max(1, touching(state)) : 0;
      default -> trailing(state, limits, response);
    };
  }

  /** Whether the rest after a day's turning is due: not even the smallest turn is left of it. */
  static boolean restDue(State state, Limits limits, Instant now) {
    double left = limits.beginnerDay().turns() - today(state, limits, now).turns();
    return left < Turn.SIXTEENTH.turns() - SLACK;
  }
}
