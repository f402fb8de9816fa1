package quarterturn.rehearsal.cover;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Place;

/** Finds the shortest road, by lengths that are asked for piece by piece. */
final class Shortest {
  private final Roads roads;
  private final ToDoubleFunction<Road> length;

  /**
   * @param length of a piece of road, above 0
   */
  Shortest(Roads roads, ToDoubleFunction<Road> length) {
    this.roads = roads;
    this.length = length;
  }

  private record At(Place place, @Nullable Road by, @Nullable At before, double length) {}

  /**
   * From a step to the far end of the nearest piece of some kind, by none that can't be taken.
   *
   * @return at least one piece, or none where there is no such road
   */
  List<Road> road(Place start, Predicate<Road> kind) {
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
            open.add(new At(next.to(), next, at, at.length() + length.applyAsDouble(next)));
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
}
