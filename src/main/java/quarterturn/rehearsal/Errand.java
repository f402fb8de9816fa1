package quarterturn.rehearsal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Library;
import quarterturn.procedure.Way;
import quarterturn.session.Place;

/**
 * The way that a session is to take, and what it would have to be like to come there. Where a
 * condition asks that another step was reached so many times, that step is gone to first.
 */
final class Errand {
  /** A way that no session took may be one that none can take, so it is rather gone around. */
  private static final double UNTRODDEN = 6;

  /** Steps to be reached first hang on others to be reached first, but not deeper than this. */
  private static final int DEEPEST = 4;

  private final @Nullable Way goal;
  private final @Nullable Place first;
  private final Map<Place, Double> lengths;
  private final Wishes wishes;

  private Errand(
      @Nullable Way goal, @Nullable Place first, Map<Place, Double> lengths, Wishes wishes) {
    this.goal = goal;
    this.first = first;
    this.lengths = lengths;
    this.wishes = wishes;
  }

  /** Nowhere in particular. */
  static Errand none(Library library, SplittableRandom random) {
    return new Errand(null, null, Map.of(), new Wishes(library, random));
  }

  /**
   * By a road that differs from session to session.
   *
   * @param reached how often each step was reached in this session
   */
  static Errand to(
      Way goal,
      Place from,
      Map<Place, Integer> reached,
      Set<Way> wanted,
      Roads roads,
      Library library,
      SplittableRandom random) {
    Map<Roads.Road, Double> drawn = new HashMap<>();
    ToDoubleFunction<Roads.Road> length =
        road ->
            drawn.computeIfAbsent(
                road,
                r -> 1 + 2 * random.nextDouble() + (wanted.contains(r.way()) ? UNTRODDEN : 0));
    Predicate<Roads.Road> end = road -> goal.equals(road.way());
    Place first = null;
    for (int i = 0; ; i++) {
      Map<Place, Double> lengths = roads.lengths(end, length);
      List<Roads.Road> road = roads.road(from, end, lengths, length);
      Place sooner = i < DEEPEST ? first(road, reached) : null;
      if (sooner == null || sooner.equals(first)) {
        return new Errand(goal, first, lengths, Wishes.along(road, library, random));
      }
      first = sooner;
      end = piece -> piece.to().equals(sooner);
    }
  }

  /** The first step that has to be reached more often before the road is open, or null. */
  private static @Nullable Place first(List<Roads.Road> road, Map<Place, Integer> reached) {
    Map<Place, Integer> passed = new HashMap<>(reached);
    for (Roads.Road piece : road) {
      Way way = piece.way();
      if (way != null && piece.when() != null) {
        Place lacking = lacking(way.procedure(), piece.when(), passed);
        if (lacking != null) {
          return lacking;
        }
      }
      passed.merge(piece.to(), 1, Integer::sum);
    }
    return null;
  }

  private static @Nullable Place lacking(
      String procedure, Condition when, Map<Place, Integer> passed) {
    if (when instanceof Condition.All all) {
      for (Condition part : all.parts()) {
        Place lacking = lacking(procedure, part, passed);
        if (lacking != null) {
          return lacking;
        }
      }
    } else if (when instanceof Condition.Reached reached) {
      Place place = new Place(procedure, reached.step());
      return passed.getOrDefault(place, 0) < reached.times() ? place : null;
    }
    return null;
  }

  @Nullable Way goal() {
    return goal;
  }

  /** A step that is to be reached before the goal, or null. */
  @Nullable Place first() {
    return first;
  }

  /** How far it still is from a place, infinite where there is no way. */
  double length(Place place) {
    return place.equals(first) ? 0 : lengths.getOrDefault(place, Double.POSITIVE_INFINITY);
  }

  Wishes wishes() {
    return wishes;
  }
}
