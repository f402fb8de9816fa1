package quarterturn.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Counted;
import quarterturn.unit.Turn;

/**
 * The result of a session, from the answers that were not withdrawn.
 *
 * @param asFound the first relief reading of each string, before any turn
 * @param asLeft the last relief reading of each string after the last turn; empty where the neck
 *     was not read again
 * @param net where the rod stands from as found, plus is tighter
 * @param total every turn added up, without direction
 * @param moves how often the rod was turned
 * @param trail readings and turns, oldest first
 * @param ended how it ended, or null while it is open
 * @param discarded whether it was discarded
 */
public record Summary(
    Map<Which, Event.Read> asFound,
    Map<Which, Event.Read> asLeft,
    Turn net,
    Turn total,
    int moves,
    List<Entry> trail,
    Event.@Nullable Ended ended,
    boolean discarded) {

  /** The summary of {@code events}, given oldest first. */
  public static Summary of(List<Event> events) {
    Map<Which, Event.Read> asFound = new EnumMap<>(Which.class);
    Map<Which, Event.Read> asLeft = new EnumMap<>(Which.class);
    Turn net = Turn.NONE;
    Turn total = Turn.NONE;
    int moves = 0;
    List<Entry> trail = new ArrayList<>();
    Event.Ended ended = null;
    for (Event event : Corrections.standing(events)) {
      if (event instanceof Event.Read read
          && read.quantity() == Quantity.RELIEF
          && read.which() != null
          && read.bracket() != null) {
        if (moves == 0) {
          asFound.putIfAbsent(read.which(), read);
        }
        asLeft.put(read.which(), read);
        trail.add(new Entry.Reading(read.at(), read.which(), read.bracket(), false));
      }
      if (event instanceof Event.Turned turned) {
        trail.add(new Entry.Turned(turned.at(), turned.turn(), turned.feel()));
      }
      if (event instanceof Event.Recalled recalled && recalled.changes() != null) {
        trail.add(
            new Entry.Turned(recalled.at(), recalled.turned(), recalled.feel(), recalled.sure()));
      }
      if (event instanceof Event.OnRod rod && rod.changes() != null) {
        moves++;
        net = net.plus(rod.moved());
        total = total.plus(rod.moved().size());
        asLeft.clear();
      }
      if (event instanceof Event.Ended end) {
        ended = end;
      }
    }
    boolean discarded = events.stream().anyMatch(Event.Discarded.class::isInstance);
    return new Summary(asFound, asLeft, net, total, moves, trail, ended, discarded);
  }

  /** Whether it is known how far the rod was turned. */
  boolean sure() {
    return Entry.sure(trail);
  }

  /** The summary as labelled lines. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("As found:  " + readings(asFound, "relief was not read before the first turn"));
    lines.add(
        "As left:   "
            + readings(
                asLeft,
                moves > 0 ? "relief was not read since the last turn" : "relief was not read"));
    lines.add(
        "Rod:       "
            + (moves == 0
                ? "not turned"
                : TurnWords.net(net, sure())
                    + "; "
                    + total
                    + " in all, in "
                    + Counted.of(moves, "move")));
    if (!trail.isEmpty()) {
      lines.add("Row:       " + TrailLine.of(trail));
    }
    lines.add(
        "Ended:     "
            + (ended == null ? (discarded ? "discarded" : "still open") : EventWords.ended(ended)));
    return lines;
  }

  private static String readings(Map<Which, Event.Read> readings, String none) {
    if (readings.isEmpty()) {
      return none;
    }
    return readings.values().stream()
        .map(
            r ->
                (r.which() == null ? "" : r.which().word() + " string ")
                    + (r.string() == null ? "" : "(" + r.string() + ") ")
                    + EventWords.value(r))
        .collect(Collectors.joining("; "));
  }
}
