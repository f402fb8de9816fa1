package quarterturn.rehearsal.cover;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Verdict;
import quarterturn.session.Place;

/** The way that a session is to take, by which road, and how far on that road it has come. */
final class CoverageGoal {
  private final @Nullable Way goal;
  private final List<Road> route;
  private final PathConstraints constraints;
  private int passed;

  private CoverageGoal(@Nullable Way goal, List<Road> route, PathConstraints constraints) {
    this.goal = goal;
    this.route = route;
    this.constraints = constraints;
  }

  /** Nowhere in particular. */
  static CoverageGoal none(Roads roads, SplittableRandom random) {
    return new CoverageGoal(null, List.of(), new PathConstraints(List.of(), roads, random));
  }

  /** Down a road that ends with a way. */
  static CoverageGoal along(Way goal, List<Road> route, Roads roads, SplittableRandom random) {
    return new CoverageGoal(goal, route, new PathConstraints(route, roads, random));
  }

  @Nullable Way goal() {
    return goal;
  }

  /** Whether no road is known that leads to the goal. */
  boolean lost() {
    return goal != null && route.isEmpty();
  }

  /**
   * Goes on by the steps that were entered.
   *
   * @return whether they lie on the road
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

  /** The next piece of the road, where a place is the one it has come to; or null. */
  @Nullable Road next(Place place) {
    boolean here = passed < route.size() && route.get(passed).from().equals(place);
    return here ? route.get(passed) : null;
  }

  /** How a reading that is taken at a place should stand; empty where it is all the same. */
  Set<Verdict> verdicts(Place place) {
    return next(place) == null ? Set.of() : constraints.verdicts(passed);
  }

  /** What should be read at a place, or null. */
  @Nullable Double value(Place place) {
    return next(place) == null ? null : constraints.value(passed);
  }

  PathConstraints constraints() {
    return constraints;
  }
}
