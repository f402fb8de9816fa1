package quarterturn.session.store;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.NeckTraits;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.Engine;

/**
 * A whole session played on a simulated instrument, to be written many times over.
 *
 * @param net how far it moved the rod in all, in turns; plus is tighter
 */
record Played(
    String kind, Role role, Library library, List<Event> events, double net, Duration time) {
  private static final int FEWEST = 40;
  private static final int MOST = 160;
  private static final Duration LONGEST = Duration.ofDays(3);

  /** What is played: some with many turns, some with none, as years of set-ups have them. */
  private static final List<String> PROCEDURES = List.of("relief", "relief", "setup", "season");

  /** Sessions on sound necks of a kind, which are found as often too low as too high. */
  static List<Played> pool(Sessions sessions, String kind, int many)
      throws IOException, UnreadableException {
    Map<String, Library> libraries = new HashMap<>();
    for (String procedure : PROCEDURES) {
      libraries.put(procedure, sessions.library(procedure));
    }
    List<Played> pool = new ArrayList<>();
    for (int seed = 0; pool.size() < many; seed++) {
      Library library =
          Objects.requireNonNull(libraries.get(PROCEDURES.get(seed % PROCEDURES.size())));
      Played played = play(library, kind, seed % 3 == 0 ? Role.TECHNICIAN : Role.BEGINNER, seed);
      if (played != null) {
        pool.add(played);
      }
    }
    return pool;
  }

  /** A session on a sound neck, not begun yet. */
  static PracticeBench bench(Library library, String kind, Role role, int seed, Instant at)
      throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    Kind known = library.kind(kind);
    NeckTraits neck = Draw.neck(NeckFault.NONE, random);
    InstrumentTraits traits =
        seed % 2 == 0
            ? InstrumentTraits.of(known, Style.MEDIUM, neck)
            : InstrumentTraits.neglected(known, Style.MEDIUM, neck);
    Event.Started started =
        new Event.Started(
            at,
            library.main().id(),
            library.main().revision(),
            library.main().digest(),
            role,
            null,
            kind,
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            null);
    return PracticeBench.start(
        library,
        new Engine(library, new BeliefAdvisor()),
        started,
        new SimulatedInstrument(traits, new SimulatedNeck(neck, random), known),
        "",
        PracticeBench.Kept.NOWHERE);
  }

  private static @Nullable Played play(Library library, String kind, Role role, int seed)
      throws IOException {
    PracticeBench bench = bench(library, kind, role, seed, Rehearsal.START);
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
        ? new Played(kind, role, library, events, net, time)
        : null;
  }
}
