package quarterturn.rehearsal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import quarterturn.craft.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Way;
import quarterturn.session.Engine;
import quarterturn.session.Place;

/**
 * Plays sessions of a procedure until every way of it, and of those it calls, was taken.
 *
 * <p>Each session has an errand: a way that no session took yet. It chooses what leads there, its
 * neck and its readings are such as the conditions along the road ask for, and wherever one answer
 * leads to a way never taken, that answer is given. The rest is chance, from a seed.
 */
public final class Cover {
  private final Library library;
  private final Engine engine;
  private final Roads roads;
  private final Set<Way> wanted = new LinkedHashSet<>();
  private final Map<Way, Integer> tried = new HashMap<>();
  private final Map<Place, Integer> reached = new HashMap<>();
  private final Set<String> outcomes = new TreeSet<>();
  private final Map<String, Covered.Stuck> stuck = new LinkedHashMap<>();

  private Cover(Library library) {
    this.library = library;
    this.engine = new Engine(library, new BeliefAdvisor());
    this.roads = new Roads(library);
    this.wanted.addAll(roads.ways());
  }

  /**
   * Plays until every way was taken, or a bound is met. The same seed gives the same result, unless
   * the time was up first.
   *
   * @param library the procedure to play stands first
   * @param most sessions at the most
   * @param time after which no further session is begun
   */
  public static Covered of(Library library, long seed, int most, Duration time) {
    return new Cover(library).play(seed, most, time);
  }

  private Covered play(long seed, int most, Duration time) {
    SplittableRandom random = new SplittableRandom(seed);
    long end = System.nanoTime() + time.toNanos();
    int sessions = 0;
    while (sessions < most && !open().isEmpty() && System.nanoTime() < end) {
      session(random.split());
      sessions++;
    }
    List<Way> taken = new ArrayList<>(roads.ways());
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
    return new Covered.Never(way, times, roads.closed(way));
  }

  /** Ways that were never taken and may be. */
  private List<Way> open() {
    return wanted.stream().filter(way -> roads.closed(way) == null).toList();
  }

  /** The one that was tried least often, or any. */
  private Errand errand(Place from, Map<Place, Integer> passed, SplittableRandom random) {
    List<Way> open = open();
    if (open.isEmpty() || random.nextInt(12) == 0) {
      return Errand.none(library, random);
    }
    Way goal = open.get(random.nextInt(open.size()));
    for (Way way : open) {
      if (tried.getOrDefault(way, 0) < tried.getOrDefault(goal, 0)) {
        goal = way;
      }
    }
    tried.merge(goal, 1, Integer::sum);
    return Errand.to(goal, from, passed, wanted, roads, library, random);
  }

  private void session(SplittableRandom random) {
    Place begin = new Place(library.main().id(), library.main().begin());
    Errand errand = errand(begin, Map.of(), random);
    try {
      AnySession session = AnySession.start(library, engine, roads, errand, random);
      while (session.goesOn()) {
        session.step(wanted);
        onward(session, see(session), random);
      }
      see(session);
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

  /** What was done of the errand is done: on to what is left of it, or to another. */
  private void onward(AnySession session, List<Place> entered, SplittableRandom random) {
    Errand errand = session.hands().errand();
    Way goal = errand.goal();
    if (goal != null && !wanted.contains(goal)) {
      session.hands().goOn(errand(session.place(), session.reached(), random));
    } else if (goal != null && errand.first() != null && entered.contains(errand.first())) {
      Place from = session.place();
      session
          .hands()
          .goOn(Errand.to(goal, from, session.reached(), wanted, roads, library, random));
    }
  }

  private List<Place> see(AnySession session) {
    session.fresh().forEach(wanted::remove);
    List<Place> entered = session.entered();
    entered.forEach(place -> reached.merge(place, 1, Integer::sum));
    return entered;
  }
}
