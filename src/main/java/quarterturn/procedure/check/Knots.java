package quarterturn.procedure.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The knots of a graph: sets of steps that all lead to each other, by Tarjan's algorithm for
 * strongly connected components (SIAM Journal on Computing 1, 1972).
 */
final class Knots {
  private final Map<String, Set<String>> graph;
  private final Map<String, Integer> order = new HashMap<>();
  private final Map<String, Integer> lowest = new HashMap<>();
  private final Deque<String> open = new ArrayDeque<>();
  private final Set<String> standing = new HashSet<>();
  private final List<Set<String>> found = new ArrayList<>();

  Knots(Map<String, Set<String>> graph) {
    this.graph = graph;
    for (String step : graph.keySet()) {
      if (!order.containsKey(step)) {
        visit(step);
      }
    }
  }

  /** Those with a loop in them, each in the graph's order. */
  List<Set<String>> all() {
    List<Set<String>> knots = new ArrayList<>();
    for (Set<String> one : found) {
      String first = one.iterator().next();
      boolean loops = one.size() > 1 || graph.getOrDefault(first, Set.of()).contains(first);
      if (loops) {
        Set<String> ordered = new LinkedHashSet<>(graph.keySet());
        ordered.retainAll(one);
        knots.add(ordered);
      }
    }
    return knots;
  }

  /** A file has few enough steps for their chain to fit the stack. */
  private void visit(String step) {
    int place = order.size();
    order.put(step, place);
    lowest.put(step, place);
    open.push(step);
    standing.add(step);
    for (String next : graph.getOrDefault(step, Set.of())) {
      if (!graph.containsKey(next)) {
        continue;
      }
      if (!order.containsKey(next)) {
        visit(next);
        lower(step, lowest.getOrDefault(next, place));
      } else if (standing.contains(next)) {
        lower(step, order.getOrDefault(next, place));
      }
    }
    if (lowest.getOrDefault(step, place) == place) {
      Set<String> knot = new HashSet<>();
      String last;
      do {
        last = open.pop();
        standing.remove(last);
        knot.add(last);
      } while (!last.equals(step));
      found.add(knot);
    }
  }

  private void lower(String step, int to) {
    lowest.merge(step, to, Math::min);
  }
}
