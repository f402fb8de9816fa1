package quarterturn.rehearsal.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;
import quarterturn.session.Place;

/**
 * Finds a road from a step to a way, past everything that its conditions need: where one asks that
 * something was chosen, felt, or reached a number of times, the road goes there first. A loop is
 * repeated until its count is reached.
 */
record Route(Roads roads, Set<Way> wanted, SplittableRandom random, Map<Road, Double> drawn) {
  /** Extra length of a way that no session took, since it may be closed. */
  private static final double UNTRODDEN = 1;

  private static final double BREAK = 10;

  private static final double DETOUR = 4;

  /**
   * How many levels of needs are followed, where meeting one condition needs others to be met
   * first.
   */
  private static final int DEEPEST = 4;

  private static final int MOST_LEGS = 12;

  /**
   * A random road to a way; empty where no open road leads there.
   *
   * @param past what has happened in the session that is at {@code from}
   * @param wanted the ways that no session took
   */
  static List<Road> to(
      Way goal, Place from, PathState past, Set<Way> wanted, Roads roads, SplittableRandom random) {
    Route drawing = new Route(roads, wanted, random, new IdentityHashMap<>());
    List<Road> route = drawing.legs(from, past, road -> goal.equals(road.way()), DEEPEST);
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

  /** A partial road in the search: its end, last piece, part before that, and length. */
  private record At(Place place, @Nullable Road by, @Nullable At before, double length) {}

  /**
   * The shortest open road from a step to the end of a piece of some kind.
   *
   * @return at least one piece, or an empty list where there is no such road
   */
  private List<Road> leg(Place start, PathState past, Predicate<Road> kind) {
    PriorityQueue<At> open = new PriorityQueue<>(Comparator.comparingDouble(At::length));
    Set<Place> seen = new HashSet<>();
    open.add(new At(start, null, null, 0));
    while (!open.isEmpty()) {
      At at = open.remove();
      if (at.by() != null && kind.test(at.by())) {
        return pieces(at);
      }
      if (seen.add(at.place())) {
        for (Road next : roads.from(at.place())) {
          boolean useless = seen.contains(next.to()) && !kind.test(next);
          if (!useless && roads.closed(next) == null) {
            open.add(new At(next.to(), next, at, at.length() + length(next, past)));
          }
        }
      }
    }
    return List.of();
  }

  private static List<Road> pieces(At end) {
    LinkedList<Road> pieces = new LinkedList<>();
    for (At at = end; at != null && at.by() != null; at = at.before()) {
      pieces.addFirst(at.by());
    }
    return List.copyOf(pieces);
  }

  private double length(Road road, PathState past) {
    double length = drawn.computeIfAbsent(road, this::draw);
    PathState.Lack lack = past.lack(road);
    return lack == null ? length : length + DETOUR * lack.pains();
  }

  private double draw(Road road) {
    double untrodden = wanted.contains(road.way()) ? UNTRODDEN : 0;
    return 1 + 2 * random.nextDouble() + untrodden + (road.breaks() ? BREAK : 0);
  }

  /**
   * The road to the nearest piece that mends a lack of a leg; empty where no lack can be mended.
   *
   * @param end matches the last piece of the leg
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
