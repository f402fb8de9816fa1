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
import quarterturn.session.store.Store;
import quarterturn.unit.Bracket;

/**
 * What happened to a neck, as the advisor wants it: its readings, turns and rests in the order of
 * time, other sessions' included.
 */
public final class Story {
  /**
   * Something that happened.
   *
   * @param lost whether something unknown happened to the neck before it
   */
  private record Timed(Instant at, boolean lost, Seen seen) {}

  private final List<Timed> all = new ArrayList<>();
  private boolean lost;

  private Story() {}

  /**
   * The story that an instrument's turns tell, as {@link Store#pastOf} gives them.
   *
   * @param past oldest first
   */
  public static List<Seen> of(List<Event.Past> past, Limits limits) {
    Story story = new Story();
    story.others(past);
    return story.told(limits);
  }

  static List<Seen> of(State state, Limits limits) {
    Story story = new Story();
    story.others(state.started().past());
    story.others(state.history().elsewhere());
    story.own(state);
    story.all.sort(Comparator.comparing(Timed::at));
    return story.told(limits);
  }

  private void add(Instant at, Seen seen) {
    all.add(new Timed(at, lost, seen));
    lost = false;
  }

  /** A reading is told once, though it ends one turn and begins the next. */
  private void others(List<Event.Past> turns) {
    Bracket at = null;
    for (Event.Past past : turns) {
      Bracket before = past.before();
      lost |= before == null;
      if (before != null && !before.equals(at)) {
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

  /** After a turn that may have been another than was said, the neck is found anew. */
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
        if (timed.lost()) {
          story.add(new Seen.Rested(Double.POSITIVE_INFINITY));
        } else if (pause.compareTo(limits.pause()) >= 0) {
          story.add(new Seen.Rested(pause.toMinutes() / 60.0));
        }
      }
      story.add(timed.seen());
      before = timed;
    }
    return story;
  }
}
