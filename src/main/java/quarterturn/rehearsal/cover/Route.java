package quarterturn.rehearsal.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
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
 * Finds a path from a step to a way, past everything that its conditions need: where one asks that
 * something was chosen, felt, or reached a number of times, the path goes there first. A loop is
 * repeated until its count is reached.
 */
record Route(FlowGraph graph, Set<Way> wanted, SplittableRandom random, Map<Edge, Double> drawn) {
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
   * A random path to a way; empty where no open path leads there.
   *
   * @param past what has happened in the session that is at {@code from}
   * @param wanted the ways that no session took
   */
  static List<Edge> to(
      Way goal,
      Place from,
      PathState past,
      Set<Way> wanted,
      FlowGraph graph,
      SplittableRandom random) {
    Route drawing = new Route(graph, wanted, random, new IdentityHashMap<>());
    Predicate<Edge> end = edge -> goal.equals(edge.way());
    List<Edge> route = drawing.legs(from, past, end, drawing.leg(from, past, end), DEEPEST);
    return shut(route, past) ? List.of() : route;
  }

  private static boolean shut(List<Edge> route, PathState before) {
    PathState past = before.copy();
    for (Edge edge : route) {
      if (past.lack(edge) != null) {
        return true;
      }
      past.pass(edge);
    }
    return false;
  }

  /**
   * The path to an edge of some kind, past what it needs.
   *
   * @param direct the shortest, whatever it needs
   */
  private List<Edge> legs(
      Place start, PathState before, Predicate<Edge> end, List<Edge> direct, int deeper) {
    List<Edge> route = new ArrayList<>();
    PathState past = before.copy();
    Place from = start;
    List<Edge> leg = direct;
    for (int i = 0; ; i++) {
      boolean may = i < MOST_LEGS && deeper > 0;
      List<Edge> first = may ? first(from, past, leg, end, deeper) : List.of();
      if (leg.isEmpty() || first.isEmpty()) {
        route.addAll(leg);
        return leg.isEmpty() ? List.of() : route;
      }
      route.addAll(first);
      first.forEach(past::pass);
      from = first.get(first.size() - 1).to();
      leg = leg(from, past, end);
    }
  }

  /** A partial path in the search: its end, last edge, part before that, and length. */
  private record At(Place place, @Nullable Edge by, @Nullable At before, double length) {}

  /**
   * The shortest open path from a step to the end of an edge of some kind.
   *
   * @return at least one edge, or an empty list where there is no such path
   */
  private List<Edge> leg(Place start, PathState past, Predicate<Edge> kind) {
    PriorityQueue<At> open = new PriorityQueue<>(Comparator.comparingDouble(At::length));
    Set<Place> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    open.add(new At(graph.canonical(start), null, null, 0));
    while (!open.isEmpty()) {
      At at = open.remove();
      if (at.by() != null && kind.test(at.by())) {
        return pieces(at);
      }
      if (seen.add(at.place())) {
        for (Edge next : graph.open(at.place())) {
          if (!seen.contains(next.to()) || kind.test(next)) {
            open.add(new At(next.to(), next, at, at.length() + length(next, past)));
          }
        }
      }
    }
    return List.of();
  }

  private static List<Edge> pieces(At end) {
    LinkedList<Edge> pieces = new LinkedList<>();
    for (At at = end; at != null && at.by() != null; at = at.before()) {
      pieces.addFirst(at.by());
    }
    return List.copyOf(pieces);
  }

  private double length(Edge edge, PathState past) {
    double length = drawn.computeIfAbsent(edge, this::draw);
    PathState.Lack lack = past.lack(edge);
    return lack == null ? length : length + DETOUR * lack.pains();
  }

  private double draw(Edge edge) {
    double untrodden = wanted.contains(edge.way()) ? UNTRODDEN : 0;
    return 1 + 2 * random.nextDouble() + untrodden + (edge.breaks() ? BREAK : 0);
  }

  /** What mends a lack, and the shortest path to it. */
  private record Need(Predicate<Edge> mends, List<Edge> direct) {}

  /**
   * The path to the nearest edge that mends a lack of a leg; empty where no lack can be mended.
   *
   * @param end matches the last edge of the leg
   */
  private List<Edge> first(
      Place from, PathState before, List<Edge> leg, Predicate<Edge> end, int deeper) {
    List<Predicate<Edge>> lacks = new ArrayList<>();
    PathState past = before.copy();
    for (Edge edge : leg) {
      PathState.Lack lack = past.lack(edge);
      if (lack != null && lack.mend() != null) {
        lacks.add(lack.mend());
      }
      past.pass(edge);
    }
    if (lacks.isEmpty()) {
      return List.of();
    }
    // What leads away from the end for good is of no use.
    Set<Place> towards = graph.towards(end);
    // Of two that contradict each other the one nearer to the end counts.
    Collections.reverse(lacks);
    List<Need> needs = new ArrayList<>();
    for (Predicate<Edge> lack : lacks) {
      Predicate<Edge> mends = lack.and(edge -> towards.contains(edge.to()));
      needs.add(new Need(mends, leg(from, before, mends)));
    }
    needs.sort(Comparator.comparing(need -> need.direct().size()));
    for (Need need : needs) {
      List<Edge> first = legs(from, before, need.mends(), need.direct(), deeper - 1);
      if (!first.isEmpty()) {
        return first;
      }
    }
    return List.of();
  }
}
