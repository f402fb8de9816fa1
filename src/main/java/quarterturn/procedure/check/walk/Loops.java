package quarterturn.procedure.check.walk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;

/**
 * Finds the loops of a procedure that nothing limits. A loop is limited where it passes a step and
 * a way that is open only while that step was reached fewer times than a number; where it turns the
 * rod and asks what the neck did; and where it rests for a day and asks what was turned that day.
 */
public final class Loops {
  private record Way(String from, String to) {}

  /**
   * A limit of the loops that pass one of some steps and one of some ways.
   *
   * @param steps places of the steps, one of which such a loop passes
   * @param ways the ways, one of which such a loop takes: by place, the places they lead to
   * @param leaves whether one of the ways from a place has to leave the loop: a question limits
   *     nothing whose every answer goes round once more
   */
  private record Limit(BitSet steps, BitSet[] ways, boolean leaves) {
    /** The ways that limit the loops within some places. */
    BitSet[] within(BitSet places) {
      return Arrays.stream(ways)
          .map(to -> leaves && Limit.outside(to, places).isEmpty() ? new BitSet() : to)
          .toArray(BitSet[]::new);
    }

    private static BitSet outside(BitSet to, BitSet places) {
      BitSet outside = (BitSet) to.clone();
      outside.andNot(places);
      return outside;
    }
  }

  private final List<String> ids;
  private final BitSet[] next;
  private final List<Limit> limits = new ArrayList<>();

  public Loops(Procedure procedure) {
    Collection<Step> steps = procedure.steps().values();
    this.ids = List.copyOf(procedure.steps().keySet());
    this.next = none();
    steps.forEach(step -> Ways.from(step).forEach(to -> add(next, new Way(step.id(), to))));
    Map<String, Set<Way>> counted = new LinkedHashMap<>();
    Set<String> turns = new HashSet<>();
    Set<String> rests = new HashSet<>();
    Set<Way> progress = new HashSet<>();
    Set<Way> days = new HashSet<>();
    for (Step step : steps) {
      if (step instanceof Step.TurnRod) {
        turns.add(step.id());
      }
      if (step instanceof Step.Wait wait && wait.rest()) {
        rests.add(step.id());
      }
      counted(step, step.fork(), counted);
      if (asks(step.fork(), Subject.Neck.class) || asks(step.fork(), Subject.Rod.class)) {
        Ways.from(step).forEach(to -> progress.add(new Way(step.id(), to)));
      }
      if (asks(step.fork(), Subject.Turning.class)) {
        Ways.from(step).forEach(to -> days.add(new Way(step.id(), to)));
      }
    }
    counted.forEach((step, ways) -> limit(Set.of(step), ways, false));
    limit(turns, progress, true);
    limit(rests, days, true);
  }

  /** A graph of the steps without any way. */
  private BitSet[] none() {
    return ids.stream().map(id -> new BitSet()).toArray(BitSet[]::new);
  }

  private void add(BitSet[] graph, Way way) {
    int from = ids.indexOf(way.from());
    int to = ids.indexOf(way.to());
    if (from >= 0 && to >= 0) {
      graph[from].set(to);
    }
  }

  private void limit(Set<String> steps, Set<Way> ways, boolean leaves) {
    BitSet passed = new BitSet();
    steps.stream().mapToInt(ids::indexOf).filter(place -> place >= 0).forEach(passed::set);
    BitSet[] open = none();
    ways.forEach(way -> add(open, way));
    limits.add(new Limit(passed, open, leaves));
  }

  private static boolean asks(Branch.Fork fork, Class<? extends Subject> about) {
    return fork.branches().stream()
        .flatMap(branch -> branch.when().subjects().stream())
        .anyMatch(about::isInstance);
  }

  /**
   * Adds the ways that are open only while a step was reached fewer times than a number, by that
   * step.
   */
  private static void counted(Step step, Branch.Fork fork, Map<String, Set<Way>> counted) {
    Map<String, Set<String>> limited = new HashMap<>();
    fork.branches().forEach(branch -> limit(limited, branch.go(), below(branch.when())));
    if (fork.otherwise() != null) {
      limit(limited, fork.otherwise(), reached(fork));
    }
    limited.forEach(
        (go, steps) ->
            steps.forEach(
                one ->
                    counted
                        .computeIfAbsent(one, s -> new HashSet<>())
                        .add(new Way(step.id(), go))));
  }

  /** Of several ways to one step, those steps count that each of the ways is limited by. */
  private static void limit(Map<String, Set<String>> limited, String go, Set<String> by) {
    limited.computeIfAbsent(go, way -> new HashSet<>(by)).retainAll(by);
  }

  /** The steps that were reached fewer times than a number where no branch is taken. */
  private static Set<String> reached(Branch.Fork fork) {
    return fork.branches().stream()
        .map(Branch::when)
        .filter(Condition.Reached.class::isInstance)
        .map(when -> ((Condition.Reached) when).step())
        .collect(Collectors.toSet());
  }

  /** The steps of which a condition demands that they were reached fewer times than a number. */
  private static Set<String> below(Condition condition) {
    return condition.match(
        all ->
            all.parts().stream().flatMap(part -> below(part).stream()).collect(Collectors.toSet()),
        any -> Set.of(),
        not -> not.part() instanceof Condition.Reached reached ? Set.of(reached.step()) : Set.of(),
        atom -> Set.of());
  }

  /**
   * The shortest endless loop of each strongly connected component, as the ids on it, in the file's
   * order.
   */
  public List<List<String>> endless() {
    List<List<Integer>> found = new ArrayList<>();
    List<BitSet> knots = new ArrayList<>(StronglyConnectedComponents.of(next));
    knots.sort(Comparator.comparingInt(knot -> knot.nextSetBit(0)));
    for (BitSet knot : knots) {
      List<Integer> loop = endless(within(next, knot), knot);
      if (loop != null) {
        found.add(loop);
      }
    }
    return found.stream().map(loop -> loop.stream().map(ids::get).toList()).toList();
  }

  /**
   * An endless loop within a strongly connected component, or null: one that leaves out what would
   * limit it.
   */
  private @Nullable List<Integer> endless(BitSet[] graph, BitSet knot) {
    for (Limit limit : limits) {
      BitSet[] ways = limit.within(knot);
      if (knot.intersects(limit.steps()) && anyOf(graph, ways)) {
        BitSet left = (BitSet) knot.clone();
        left.andNot(limit.steps());
        List<Integer> loop = inKnots(within(graph, left));
        return loop != null ? loop : inKnots(without(graph, ways));
      }
    }
    return shortest(graph);
  }

  private @Nullable List<Integer> inKnots(BitSet[] graph) {
    for (BitSet knot : StronglyConnectedComponents.of(graph)) {
      List<Integer> loop = endless(within(graph, knot), knot);
      if (loop != null) {
        return loop;
      }
    }
    return null;
  }

  private static boolean anyOf(BitSet[] graph, BitSet[] ways) {
    return IntStream.range(0, graph.length).anyMatch(from -> graph[from].intersects(ways[from]));
  }

  private static BitSet[] without(BitSet[] graph, BitSet[] ways) {
    BitSet[] less = new BitSet[graph.length];
    for (int from = 0; from < less.length; from++) {
      less[from] = (BitSet) graph[from].clone();
      less[from].andNot(ways[from]);
    }
    return less;
  }

  /** The graph without the ways that leave or enter some places. */
  private static BitSet[] within(BitSet[] graph, BitSet places) {
    BitSet[] inner = new BitSet[graph.length];
    for (int from = 0; from < inner.length; from++) {
      inner[from] = new BitSet();
      if (places.get(from)) {
        inner[from].or(graph[from]);
        inner[from].and(places);
      }
    }
    return inner;
  }

  /** The shortest loop of a graph. */
  private static @Nullable List<Integer> shortest(BitSet[] graph) {
    List<Integer> best = null;
    for (int start = 0; start < graph.length; start++) {
      List<Integer> loop = back(graph, start);
      if (loop != null && (best == null || loop.size() < best.size())) {
        best = loop;
      }
    }
    return best;
  }

  private static @Nullable List<Integer> back(BitSet[] graph, int start) {
    Map<Integer, Integer> from = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      int step = open.poll();
      for (int to : graph[step].stream().toArray()) {
        if (to == start) {
          List<Integer> loop = new ArrayList<>(List.of(step));
          for (int at = step; at != start; ) {
            at = from.getOrDefault(at, start);
            loop.add(0, at);
          }
          return loop;
        }
        if (from.putIfAbsent(to, step) == null) {
          open.add(to);
        }
      }
    }
    return null;
  }
}
