package quarterturn.soak;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Carried;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;

/**
 * Holds what was asked for in all sessions of each instrument to the limits: our policy on common
 * practice, no source. What a player reports can be anything; what the program asks for can't.
 */
final class LimitsKept {
  private static final double SLACK = 1e-9;
  private static final double AT_ONCE = 0.25;
  private static final double A_DAY = 0.5;
  private static final double IN_ALL = 1;
  private static final Duration DAY = Duration.ofHours(24);

  private final String name;
  private final List<String> broken = new ArrayList<>();
  private final List<Made> made = new ArrayList<>();
  private boolean read;
  private boolean undo;
  private double net;

  private record Made(Instant at, double turns) {}

  private LimitsKept(String name) {
    this.name = name;
  }

  /** Limits that were broken over these sessions, a line each. */
  static List<String> broken(List<Path> sessions) throws IOException {
    Map<String, List<Event>> instruments = new TreeMap<>();
    for (Path session : sessions) {
      List<Event> events = Journal.read(session).events();
      if (!events.isEmpty() && events.get(0) instanceof Event.Started started) {
        String of = started.instrument() == null ? session.toString() : started.instrument();
        instruments.computeIfAbsent(of, any -> new ArrayList<>()).addAll(standing(events));
      }
    }
    List<String> broken = new ArrayList<>();
    instruments.forEach(
        (name, events) -> {
          LimitsKept kept = new LimitsKept(name);
          events.stream().sorted(Comparator.comparing(Event::at)).forEach(kept::take);
          broken.addAll(kept.broken);
        });
    return broken;
  }

  private static List<Event> standing(List<Event> events) {
    return Corrections.standing(events);
  }

  private void take(Event event) {
    Carried carried = Carried.of(event);
    if (carried != null && carried.anew()) {
      net = 0;
    }
    if (event instanceof Event.Read one && one.quantity() == Quantity.RELIEF && !one.missing()) {
      read = true;
    } else if (event instanceof Event.UndoAsked) {
      undo = true;
    } else if (event instanceof Event.Waited waited && waited.reason() != null) {
      made.clear();
    } else if (event instanceof Event.Offered offered) {
      offered(offered);
    } else if (event instanceof Event.Turned turned) {
      made(turned.at(), turned.turn().turns());
    } else if (event instanceof Event.Recalled recalled) {
      made(recalled.at(), recalled.turned().turns());
    }
  }

  private void made(Instant at, double turns) {
    undo = false;
    if (turns != 0) {
      made.add(new Made(at, turns));
      net += turns;
      read = false;
    }
  }

  private void offered(Event.Offered offered) {
    double turn = offered.turn().turns();
    double size = Math.abs(turn);
    Instant since = offered.at().minus(DAY);
    double day =
        made.stream()
            .filter(one -> one.at().isAfter(since))
            .mapToDouble(one -> Math.abs(one.turns()))
            .sum();
    brokenIf(size > AT_ONCE + SLACK, offered, "more than a quarter turn");
    brokenIf(!read && !undo, offered, "no reading since the turn before");
    brokenIf(day + size > A_DAY + SLACK, offered, "within a day after " + day);
    brokenIf(
        Math.abs(net + turn) > IN_ALL + SLACK && Math.abs(net + turn) > Math.abs(net),
        offered,
        "from as found, standing at " + net);
  }

  private void brokenIf(boolean is, Event.Offered offered, String what) {
    if (is) {
      broken.add(name + ": limit: " + offered + ": " + what);
    }
  }
}
