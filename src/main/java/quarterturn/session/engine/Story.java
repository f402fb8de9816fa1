package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quarterturn.craft.rod.Seen;
import quarterturn.procedure.Limits;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * Tells the advisor what happened to a neck: its readings, turns and rests in the order of time,
 * those of other sessions too.
 */
public final class Story {
  /**
   * An event with its time.
   *
   * @param order its place among others in time: in one session as it was told, where the clock was
   *     set back in it too
   * @param session a number for its session
   * @param lost whether something unknown may have happened to the neck before
   */
  private record Timed(Instant at, Instant order, int session, boolean lost, Seen seen) {}

  private final List<Timed> all = new ArrayList<>();
  private int session;
  private boolean lost;

  private Story() {}

  /**
   * The story of an instrument's turns over all sessions.
   *
   * @param past the turns, oldest first
   */
  public static List<Seen> of(List<Event.Past> past, Limits limits) {
    Story story = new Story();
    story.others(past);
    return story.told(limits);
  }

  static List<Seen> of(State state, Limits limits) {
    Story story = new Story();
    story.others(state.history().others().all());
    story.session++;
    story.own(state);
    story.all.sort(Comparator.comparing(Timed::order));
    return story.told(limits);
  }

  private void add(Instant at, Seen seen) {
    Timed last = all.isEmpty() ? null : all.get(all.size() - 1);
    Instant order =
        last != null && last.session() == session && at.isBefore(last.order()) ? last.order() : at;
    all.add(new Timed(at, order, session, lost, seen));
    lost = false;
  }

  /**
   * Adds turns of other sessions. A reading that is both after one turn and before the next is
   * added once; where the two differ, the neck was away in between.
   */
  private void others(List<Event.Past> turns) {
    Bracket at = null;
    for (Event.Past past : turns) {
      Bracket before = past.before();
      lost |= before == null;
      if (before != null && !before.equals(at)) {
        session++;
        add(past.at(), new Seen.Read(before));
      }
      add(past.at(), new Seen.Turned(past.turn()));
      at = past.after();
      if (at != null) {
        add(past.at(), new Seen.Read(at));
      }
    }
  }

  private void own(State state) {
    int made = 0;
    for (Reading reading : state.history().readings()) {
      Bracket bracket = reading.read().bracket();
      boolean lowest = reading.relief() && reading.read().which() == Which.LOWEST;
      if (lowest && reading.counts() && bracket != null) {
        turns(state, made, reading.turnsBefore());
        made = reading.turnsBefore();
        add(reading.at(), new Seen.Read(bracket));
      }
    }
    turns(state, made, state.history().turns().size());
  }

  /**
   * Adds turns of this session; after one whose amount is not sure, the neck's position is unknown.
   */
  private void turns(State state, int from, int to) {
    for (TurnMade made : state.history().turns().subList(from, to)) {
      if (made.sure()) {
        add(made.at(), new Seen.Turned(made.turn()));
      } else {
        lost = true;
      }
    }
  }

  private List<Seen> told(Limits limits) {
    List<Seen> story = new ArrayList<>();
    Timed before = null;
    for (Timed timed : all) {
      if (before != null) {
        Duration pause = Duration.between(before.at(), timed.at());
        boolean away = timed.session() != before.session();
        if (timed.lost()) {
          story.add(new Seen.Rested(Double.POSITIVE_INFINITY));
        } else if (away || pause.compareTo(limits.pause()) >= 0) {
          story.add(new Seen.Rested(pause.toMinutes() / 60.0, away));
        }
      }
      story.add(timed.seen());
      before = timed;
    }
    return story;
  }
}
