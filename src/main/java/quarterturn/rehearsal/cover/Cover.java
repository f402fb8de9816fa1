package quarterturn.rehearsal.cover;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Way;
import quarterturn.session.Place;
import quarterturn.session.engine.Engine;

/**
 * Plays sessions of a procedure until every way of it, and of the procedures it calls, was taken.
 *
 * <p>Each session has a coverage goal: a way that no session took yet. The simulated person chooses
 * what leads there, the neck and the readings meet the conditions along the path, and wherever one
 * answer leads to a way never taken, that answer is given. The rest is random, from a seed.
 */
public final class Cover {
  /** How many goals are tried for a path before a session goes on without a goal. */
  private static final int MOST_GOALS = 6;

  /**
   * How often the procedure's own ways are tried for each try of a called procedure's way, since a
   * called procedure can be played alone.
   */
  private static final int OWN = 3;

  /** Tries counted for a way to which no path leads even from the first step. */
  private static final int NEVER = 12;

  /** Tries without success after which a way is given up. */
  private static final int MOST_TRIES = 200;

  private final Library library;
  private final Engine engine;
  private final FlowGraph graph;
  private final Place begin;
  private final Set<Way> wanted = new LinkedHashSet<>();
  private final Map<Way, Integer> tried = new HashMap<>();
  private final Map<Place, Integer> reached = new HashMap<>();
  private final Set<String> outcomes = new TreeSet<>();
  private final Map<String, Covered.Stuck> stuck = new LinkedHashMap<>();

  private Cover(Library library) {
    this.library = library;
    this.engine = new Engine(library, new BeliefAdvisor());
    this.graph = new FlowGraph(library);
    this.begin = new Place(library.main().id(), library.main().begin());
    this.wanted.addAll(graph.ways());
  }

  /**
   * Plays sessions until every way was taken or tried often, or a bound is met. The same seed gives
   * the same result, unless time ran out.
   *
   * @param library the library, with the procedure to play first
   * @param most the largest number of sessions
   * @param time how long new sessions may begin
   */
  public static Covered of(Library library, long seed, int most, Duration time) {
    return new Cover(library).play(seed, most, time);
  }

  private Covered play(long seed, int most, Duration time) {
    SplittableRandom random = new SplittableRandom(seed);
    long end = System.nanoTime() + time.toNanos();
    int sessions = 0;
    while (sessions < most && open().stream().anyMatch(this::goesOn) && System.nanoTime() < end) {
      session(random.split());
      sessions++;
    }
    List<Way> taken = new ArrayList<>(graph.ways());
    taken.removeAll(wanted);
    return new Covered(
        library.main().id(),
        taken,
        wanted.stream().map(this::never).toList(),
        sessions,
        List.copyOf(outcomes),
        List.copyOf(stuck.values()));
  }

  private Covered.Never never(Way way) {
    int times = reached.getOrDefault(new Place(way.procedure(), way.step()), 0);
    return new Covered.Never(way, times, graph.closed(way));
  }

  private boolean goesOn(Way way) {
    return tried.getOrDefault(way, 0) < MOST_TRIES;
  }

  /** The ways that no session took and that are not closed. */
  private Set<Way> open() {
    Set<Way> open = new LinkedHashSet<>(wanted);
    open.removeIf(way -> graph.closed(way) != null);
    return open;
  }

  /** The way tried least often among those that a path leads to, the procedure's own ways first. */
  private CoverageGoal coverageGoal(Place from, PathState past, SplittableRandom random) {
    List<Way> open = new ArrayList<>(open());
    if (open.isEmpty() || random.nextInt(12) == 0) {
      return CoverageGoal.none(graph, random);
    }
    Collections.rotate(open, random.nextInt(open.size()));
    open.sort(Comparator.comparing(this::turn));
    for (Way goal : open.subList(0, Math.min(MOST_GOALS, open.size()))) {
      List<Edge> route = Route.to(goal, from, past, wanted, graph, random);
      boolean never = route.isEmpty() && from.equals(begin);
      tried.merge(goal, never ? NEVER : 1, Integer::sum);
      if (!route.isEmpty()) {
        return CoverageGoal.along(goal, route, graph, random);
      }
    }
    return CoverageGoal.along(open.get(0), List.of(), graph, random);
  }

  private int turn(Way way) {
    int times = tried.getOrDefault(way, 0);
    return way.procedure().equals(library.main().id()) ? times / OWN : times;
  }

  private void session(SplittableRandom random) {
    CoverageGoal coverageGoal = coverageGoal(begin, new PathState(graph, null), random);
    try {
      AnySession session = AnySession.start(library, engine, graph, coverageGoal, random);
      onward(session, see(session), random);
      while (session.goesOn()) {
        session.step(open());
        onward(session, see(session), random);
      }
      String outcome = session.outcome();
      if (outcome != null) {
        outcomes.add(outcome);
      }
      Covered.Stuck found = session.stuck();
      if (found != null) {
        stuck.putIfAbsent(found.outcome() + found.last().get(found.last().size() - 1), found);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Sets a new goal or path where the session left its path, or its goal is reached or out of
   * reach.
   */
  private void onward(AnySession session, List<Place> entered, SplittableRandom random) {
    CoverageGoal coverageGoal = session.hands().coverageGoal();
    Way goal = coverageGoal.goal();
    boolean follows = coverageGoal.follow(entered);
    Place from = session.place();
    if (goal == null || !session.goesOn() || graph.from(from).isEmpty()) {
      return;
    }
    if (wanted.contains(goal)) {
      if (follows && (coverageGoal.next(from) != null || coverageGoal.lost())) {
        return;
      }
      List<Edge> route = Route.to(goal, from, session.past(), wanted, graph, random);
      if (!route.isEmpty()) {
        session.hands().goOn(CoverageGoal.along(goal, route, graph, random));
        return;
      }
    }
    session.hands().goOn(coverageGoal(from, session.past(), random));
  }

  private List<Place> see(AnySession session) {
    List<Place> entered = session.entered();
    session.fresh().forEach(wanted::remove);
    entered.forEach(place -> reached.merge(place, 1, Integer::sum));
    return entered;
  }
}
