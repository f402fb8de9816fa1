package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * The rod turns of one session, each with the relief on the lowest string before and after it.
 *
 * <p>The relief before is the last reading since the previous turn. The relief after is the last
 * one until the next turn, but none from after a break where there is one from before it, since the
 * weather may move the neck in a break. A turn that the person was not sure of has neither: it
 * counts, but nothing can be learned from it. The same holds for a turn that was asked for when the
 * session was left, since it may have been made.
 */
public final class PastTurns {
  private final List<Event.Past> turns = new ArrayList<>();
  private @Nullable Bracket reading;
  private boolean open;
  private boolean broken;
  private Event.@Nullable Offered offered;

  private PastTurns() {}

  public static List<Event.Past> of(List<Event> events) {
    PastTurns past = taken(events);
    if (past.offered != null) {
      past.turned(past.offered.at(), past.offered.turn(), false);
    }
    return List.copyOf(past.turns);
  }

  /** The turn that was asked for last and has no answer yet, or null. */
  public static Event.@Nullable Offered open(List<Event> events) {
    return taken(events).offered;
  }

  private static PastTurns taken(List<Event> events) {
    PastTurns past = new PastTurns();
    Corrections.standing(events).forEach(past::take);
    return past;
  }

  private void take(Event event) {
    // What is on record above was made before, whatever time the clock showed.
    turns.replaceAll(turn -> turn.by(event.at()));
    if (event instanceof Event.Read read) {
      read(read);
    } else if (event instanceof Event.Offered asked) {
      offered = asked;
    } else if (event instanceof Event.UndoAsked) {
      offered = null;
    } else if (event instanceof Event.OnRod rod) {
      turned(rod.at(), rod.moved(), rod.sure());
    }
    broken |= event instanceof Event.Left || event instanceof Event.Resumed;
  }

  private void read(Event.Read read) {
    if (read.quantity() != Quantity.RELIEF || read.which() != Which.LOWEST) {
      return;
    }
    Bracket bracket = read.bracket();
    reading = bracket;
    if (!open || bracket == null) {
      return;
    }
    Event.Past last = turns.get(turns.size() - 1);
    if (last.after() == null || !broken) {
      turns.set(
          turns.size() - 1,
          new Event.Past(
              last.at(), last.turn(), last.before(), bracket, last.freed(), last.latest()));
    }
  }

  private void turned(Instant at, Turn turn, boolean sure) {
    Turn freed = offered == null ? null : offered.freed();
    offered = null;
    if (sure && turn.turns() == 0) {
      return; // the rod did not move, so the reading before it still stands
    }
    if (turn.turns() != 0) {
      turns.add(new Event.Past(at, turn, sure ? reading : null, null, freed));
    }
    open = sure;
    broken = false;
    reading = null;
  }
}
