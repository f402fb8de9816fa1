package quarterturn.rehearsal.cover;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Verdict;
import quarterturn.session.Place;

/** The way that a session is to take, the path to it, and the progress on that path. */
final class CoverageGoal {
  private final @Nullable Way goal;
  private final List<Edge> route;
  private final PathConstraints constraints;
  private int passed;

  private CoverageGoal(@Nullable Way goal, List<Edge> route, PathConstraints constraints) {
    this.goal = goal;
    this.route = route;
    this.constraints = constraints;
  }

  /** A goal without any way to take. */
  static CoverageGoal none(FlowGraph graph, SplittableRandom random) {
    return new CoverageGoal(null, List.of(), new PathConstraints(List.of(), graph, random));
  }

  /** A goal to take the last way of a path. */
  static CoverageGoal along(Way goal, List<Edge> route, FlowGraph graph, SplittableRandom random) {
    return new CoverageGoal(goal, route, new PathConstraints(route, graph, random));
  }

  @Nullable Way goal() {
    return goal;
  }

  /** Whether no path to the goal is known. */
  boolean lost() {
    return goal != null && route.isEmpty();
  }

  /**
   * Advances along the path by the steps that were entered.
   *
   * @return whether they lie on the path
   */
  boolean follow(List<Place> entered) {
    for (Place place : entered) {
      boolean begin = passed == 0 && !route.isEmpty() && place.equals(route.get(0).from());
      if (passed < route.size() && place.equals(route.get(passed).to())) {
        passed++;
      } else if (!begin) {
        return false;
      }
    }
    return true;
  }

  /** The next edge if it begins at a place, or null. */
  @Nullable Edge next(Place place) {
    boolean here = passed < route.size() && route.get(passed).from().equals(place);
    return here ? route.get(passed) : null;
  }

  /** How a reading taken at a place should stand to its window; empty where any will do. */
  Set<Verdict> verdicts(Place place) {
    return next(place) == null ? Set.of() : constraints.verdicts(passed);
  }

  /** The value that should be read at a place, or null. */
  @Nullable Double value(Place place) {
    return next(place) == null ? null : constraints.value(passed);
  }

  PathConstraints constraints() {
    return constraints;
  }
}
