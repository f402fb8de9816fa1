package quarterturn.rehearsal.life;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.unit.Turn;

/** A simulated instrument, what was truly done to it, and what its owner remembers. */
final class Subject {
  private final String name;
  private final SimulatedInstrument instrument;
  private final TrueHistory history;
  private final Map<String, List<Made>> sessions = new LinkedHashMap<>();
  private final Set<String> undone = new HashSet<>();
  private final Set<String> over = new HashSet<>();
  private boolean repaired;

  /**
   * A turn that was made or tried in a session, as its owner remembers it.
   *
   * @param turn no turn where the nut did not move
   */
  record Made(Turn turn, Feel feel) {}

  Subject(String name, SimulatedInstrument instrument, TrueHistory history) {
    this.name = name;
    this.instrument = instrument;
    this.history = history;
  }

  String name() {
    return name;
  }

  SimulatedInstrument instrument() {
    return instrument;
  }

  TrueHistory history() {
    return history;
  }

  /** The turns of each of its sessions, by the session's name. */
  Map<String, List<Made>> sessions() {
    return sessions;
  }

  List<Made> made(String session) {
    return sessions.computeIfAbsent(session, name -> new ArrayList<>());
  }

  /** Notes that a turn is asked for in a session, which is not made yet. */
  void asked(String session) {
    undone.add(session);
  }

  void did(String session, Made turn) {
    undone.remove(session);
    made(session).add(turn);
  }

  /** The turn that was asked for last in a session, or null where it was not made. */
  @Nullable Made asFarAsMade(String session) {
    List<Made> all = made(session);
    return undone.contains(session) || all.isEmpty() ? null : all.get(all.size() - 1);
  }

  void over(String session) {
    over.add(session);
  }

  /** Its sessions that have not ended, in the order in which they began. */
  List<String> unfinished() {
    return sessions.keySet().stream().filter(session -> !over.contains(session)).toList();
  }

  /** The session that a file is of, by the beginning of its name, or null. */
  @Nullable String sessionOf(String file) {
    return sessions.keySet().stream().filter(file::startsWith).findFirst().orElse(null);
  }

  boolean repaired() {
    return repaired;
  }

  void repaired(boolean now) {
    repaired = now;
  }
}
