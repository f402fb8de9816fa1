package quarterturn.procedure.check.walk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Finds the sets of places of a graph that all lead to each other, by Tarjan's algorithm for
 * strongly connected components (SIAM Journal on Computing 1, 1972).
 */
final class StronglyConnectedComponents {
  /** The places that each place leads to. */
  private final BitSet[] graph;

  /** The turn at which each place was visited, from 1; 0 before. */
  private final int[] order;

  private final int[] lowest;
  private final Deque<Integer> open = new ArrayDeque<>();
  private final BitSet standing = new BitSet();
  private final List<BitSet> found = new ArrayList<>();
  private int visited;

  private StronglyConnectedComponents(BitSet[] graph) {
    this.graph = graph;
    this.order = new int[graph.length];
    this.lowest = new int[graph.length];
  }

  /**
   * The components with a loop in them.
   *
   * @param graph by place, the places it leads to
   */
  static List<BitSet> of(BitSet[] graph) {
    StronglyConnectedComponents knots = new StronglyConnectedComponents(graph);
    for (int place = 0; place < graph.length; place++) {
      // A place that leads nowhere is in no loop.
      if (knots.order[place] == 0 && !graph[place].isEmpty()) {
        knots.visit(place);
      }
    }
    return knots.found;
  }

  /**
   * Visits a place and, first, those it leads to. Recursive, since a file's steps are few enough
   * for the stack.
   */
  private void visit(int place) {
    order[place] = ++visited;
    lowest[place] = visited;
    open.push(place);
    standing.set(place);
    BitSet nexts = graph[place];
    for (int next = nexts.nextSetBit(0); next >= 0; next = nexts.nextSetBit(next + 1)) {
      if (order[next] == 0) {
        visit(next);
        lowest[place] = Math.min(lowest[place], lowest[next]);
      } else if (standing.get(next)) {
        lowest[place] = Math.min(lowest[place], order[next]);
      }
    }
    if (lowest[place] == order[place]) {
      BitSet knot = new BitSet();
      int last;
      do {
        last = open.pop();
        standing.clear(last);
        knot.set(last);
      } while (last != place);
      if (knot.cardinality() > 1 || nexts.get(place)) {
        found.add(knot);
      }
    }
  }
}
