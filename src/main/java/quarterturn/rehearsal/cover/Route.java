package quarterturn.rehearsal.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import quarterturn.procedure.Way;
import quarterturn.session.Place;

/**
 * Finds a road from a step to a way, over all that has to be passed before: where a condition asks
 * that something was chosen, felt, or reached so many times, that is gone to first, and the road
 * goes on from there. A loop is gone round until its count is full.
 */
final class Route {
  /** A way that no session took may be one that none can take, so it is rather gone around. */
  private static final double UNTRODDEN = 1;

  private static final double BREAK = 10;

  private static final double DETOUR = 4;

  /** What is to be passed first hangs on other things to be passed first, but not deeper. */
  private static final int DEEPEST = 4;

  private static final int MOST_LEGS = 12;

  private final Roads roads;
  private final Set<Way> wanted;
  private final SplittableRandom random;
  private final Map<Road, Double> drawn = new IdentityHashMap<>();

  private Route(Roads roads, Set<Way> wanted, SplittableRandom random) {
    this.roads = roads;
    this.wanted = wanted;
    this.random = random;
  }

  /**
   * By a road that differs from session to session; empty where there is none that is open.
   *
   * @param past what is behind the session that stands at {@code from}
   * @param wanted ways that no session took
   */
  static List<Road> to(
      Way goal, Place from, PathState past, Set<Way> wanted, Roads roads, SplittableRandom random) {
    List<Road> route =
        new Route(roads, wanted, random).legs(from, past, road -> goal.equals(road.way()), DEEPEST);
    return shut(route, past) ? List.of() : route;
  }

  private static boolean shut(List<Road> route, PathState before) {
    PathState past = before.copy();
    for (Road piece : route) {
      if (past.lack(piece) != null) {
        return true;
      }
      past.pass(piece);
    }
    return false;
  }

  private List<Road> legs(Place start, PathState before, Predicate<Road> end, int deeper) {
    List<Road> route = new ArrayList<>();
    PathState past = before.copy();
    Place from = start;
    for (int i = 0; ; i++) {
      List<Road> leg = leg(from, past, end);
      boolean may = i < MOST_LEGS && deeper > 0;
      List<Road> first = may ? first(from, past, leg, end, deeper) : List.of();
      if (leg.isEmpty() || first.isEmpty()) {
        route.addAll(leg);
        return leg.isEmpty() ? List.of() : route;
      }
      route.addAll(first);
      first.forEach(past::pass);
      from = first.get(first.size() - 1).to();
    }
  }

  private List<Road> leg(Place from, PathState past, Predicate<Road> end) {
    return new Shortest(roads, road -> length(road, past)).road(from, end);
  }

  private double length(Road road, PathState past) {
    double length = drawn.computeIfAbsent(road, this::draw);
    PathState.Lack lack = past.lack(road);
    if (lack == null) {
      return length;
    }
    return length + DETOUR * lack.pains();
  }

  private double draw(Road road) {
    double untrodden = wanted.contains(road.way()) ? UNTRODDEN : 0;
    return 1 + 2 * random.nextDouble() + untrodden + (road.breaks() ? BREAK : 0);
  }

  /**
   * The road to the nearest of what a leg lacks; empty where it lacks nothing that can be had.
   *
   * @param end what the leg ends with
   */
  private List<Road> first(
      Place from, PathState before, List<Road> leg, Predicate<Road> end, int deeper) {
    List<Predicate<Road>> lacks = new ArrayList<>();
    PathState past = before.copy();
    for (Road piece : leg) {
      PathState.Lack lack = past.lack(piece);
      if (lack != null && lack.mend() != null) {
        lacks.add(lack.mend());
      }
      past.pass(piece);
    }
    if (lacks.isEmpty()) {
      return List.of();
    }
    // What leads away from the end for good is of no use.
    Set<Place> towards = roads.towards(end);
    lacks.replaceAll(lack -> lack.and(road -> towards.contains(road.to())));
    if (lacks.size() > 1) {
      // Of two that contradict each other the one nearer to the end counts.
      Collections.reverse(lacks);
      Map<Predicate<Road>, Integer> far = new HashMap<>();
      lacks.forEach(lack -> far.put(lack, leg(from, before, lack).size()));
      lacks.sort(Comparator.comparing(far::get));
    }
    for (Predicate<Road> lack : lacks) {
      List<Road> first = legs(from, before, lack, deeper - 1);
      if (!first.isEmpty()) {
        return first;
      }
    }
    return List.of();
  }
}
