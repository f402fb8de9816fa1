package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.session.Event;
import quarterturn.unit.Turn;

/**
 * A neck's turns in other sessions: the older ones added up, the last ones one by one.
 *
 * @param summed those that are added up, or null where none are
 * @param listed those after them, oldest first
 */
record TurnsTold(Event.@Nullable Summed summed, List<Event.Past> listed) {
  TurnsTold {
    listed = List.copyOf(listed);
  }

  /**
   * What a session's start tells: one by one the moves that the advice looks back on, those of the
   * last day, and those that may be set back.
   *
   * @param before turns before them that are added up already, or null
   * @param dayBefore when the last day began
   * @param worked when the lesson or session began whose turns may be set back, or null
   */
  static TurnsTold of(
      Event.@Nullable Summed before,
      List<Event.Past> turns,
      Instant dayBefore,
      @Nullable Instant worked) {
    int from = Math.max(0, turns.size() - BeliefAdvisor.MOST_MOVES);
    Instant since = worked == null || worked.isAfter(dayBefore) ? dayBefore : worked;
    while (from > 0 && wanted(turns, from, since)) {
      from--;
    }
    List<Event.Past> older = turns.subList(0, from);
    return new TurnsTold(plus(before, older), turns.subList(from, turns.size()));
  }

  private static boolean wanted(List<Event.Past> turns, int from, Instant since) {
    Instant last = turns.get(from - 1).at();
    return !last.isBefore(since) || last.equals(turns.get(from).at());
  }

  private static Event.@Nullable Summed plus(Event.@Nullable Summed before, List<Event.Past> more) {
    if (more.isEmpty()) {
      return before;
    }
    Turn turn = new Turn(net(more) + (before == null ? 0 : before.turn().turns()));
    int turns = more.size() + (before == null ? 0 : before.turns());
    return new Event.Summed(turn, turns, more.get(more.size() - 1).at());
  }

  private static double net(List<Event.Past> turns) {
    return turns.stream().mapToDouble(past -> past.turn().turns()).sum();
  }

  /**
   * The turns on record now that a session's start does not tell of. Those from a time of which
   * only the sum is known are one turn, of what the sums differ by.
   */
  static List<Event.Past> beside(Event.Started start, TurnsTold now) {
    Event.Summed then = start.earlier() == null ? null : start.earlier().summed();
    Instant until = later(then, now.summed());
    List<Event.Past> known = start.past();
    List<Event.Past> more = new ArrayList<>();
    if (until != null) {
      double is = net(upTo(until, now.listed())) + turned(now.summed());
      double was = net(upTo(until, known)) + turned(then);
      Turn differ = new Turn(is - was);
      if (differ.size().turns() > Turn.SLACK) {
        more.add(new Event.Past(until, differ, null, null));
      }
    }
    for (Event.Past past : now.listed()) {
      // The readings around a turn may have come later, so the turn alone tells it.
      if ((until == null || past.at().isAfter(until))
          && known.stream()
              .noneMatch(k -> past.at().equals(k.at()) && past.turn().equals(k.turn()))) {
        more.add(past);
      }
    }
    return List.copyOf(more);
  }

  private static List<Event.Past> upTo(Instant until, List<Event.Past> turns) {
    return turns.stream().filter(past -> !past.at().isAfter(until)).toList();
  }

  private static double turned(Event.@Nullable Summed summed) {
    return summed == null ? 0 : summed.turn().turns();
  }

  private static @Nullable Instant later(Event.@Nullable Summed one, Event.@Nullable Summed other) {
    if (one == null || other == null) {
      return one == null ? (other == null ? null : other.until()) : one.until();
    }
    return one.until().isAfter(other.until()) ? one.until() : other.until();
  }
}
