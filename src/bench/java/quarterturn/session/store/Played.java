package quarterturn.session.store;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.session.Event;
import quarterturn.session.RefusedException;

/**
 * A whole session played on a simulated instrument, to be written many times over.
 *
 * @param net how far it moved the rod in all, in turns; plus is tighter
 */
record Played(
    String kind, Role role, Library library, List<Event> events, double net, Duration time) {
  private static final int FEWEST = 25;
  private static final int MOST = 160;
  private static final Duration LONGEST = Duration.ofDays(3);

  /** What is played: some with many turns, some with none, as years of set-ups have them. */
  private static final List<String> PROCEDURES = List.of("relief", "relief", "setup", "season");

  /** Sessions on sound necks of a kind, which are found as often too low as too high. */
  static List<Played> pool(Sessions sessions, String kind, int many)
      throws IOException, UnreadableException {
    List<Played> pool = new ArrayList<>();
    for (int seed = 0; pool.size() < many; seed++) {
      String procedure = PROCEDURES.get(seed % PROCEDURES.size());
      Role role = seed % 3 == 0 ? Role.TECHNICIAN : Role.BEGINNER;
      Played played = play(new Practice(sessions, procedure, kind, Style.MEDIUM, role), seed);
      if (played != null) {
        pool.add(played);
      }
    }
    return pool;
  }

  private static Played play(Practice practice, int seed) throws IOException, UnreadableException {
    PracticeBench bench = practice.on(seed);
    if (bench.neck().traits().fault() != NeckFault.NONE) {
      return null;
    }
    try {
      while (!bench.prompt().ended()) {
        bench.answer(bench.truth());
      }
    } catch (RefusedException e) {
      throw new IllegalStateException(e);
    }
    List<Event> events = bench.events();
    Event.Ended ended = (Event.Ended) events.get(events.size() - 1);
    Duration time = Duration.between(events.get(0).at(), ended.at());
    boolean usual = !ended.handOver() && events.size() >= FEWEST && events.size() <= MOST;
    double net =
        events.stream()
            .filter(Event.OnRod.class::isInstance)
            .mapToDouble(event -> ((Event.OnRod) event).moved().turns())
            .sum();
    return usual && time.compareTo(LONGEST) < 0
        ? new Played(
            practice.kind(),
            practice.role(),
            practice.sessions().library(practice.procedure()),
            events,
            net,
            time)
        : null;
  }
}
