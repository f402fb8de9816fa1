package quarterturn.craft.rod;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/**
 * A sum of what happened to a neck since its last long rest.
 *
 * @param moves turns of the rod
 * @param way of the last one, 1 tightened, -1 loosened, 0 where there was none
 * @param net of all turns, plus tightened
 * @param readings since the last turn or rest
 * @param reading the last one, or null where none was taken since then
 */
record RodHistory(int moves, int way, double net, int readings, @Nullable Bracket reading) {
  static RodHistory of(List<Seen> story) {
    RodHistory course = new RodHistory(0, 0, 0, 0, null);
    for (Seen seen : story) {
      course = course.then(seen);
    }
    return course;
  }

  private RodHistory then(Seen seen) {
    if (seen instanceof Seen.Read read) {
      return new RodHistory(moves, way, net, readings + 1, read.relief());
    }
    if (seen instanceof Seen.Turned turned && turned.turn().turns() != 0) {
      double turns = turned.turn().turns();
      return new RodHistory(moves + 1, turns > 0 ? 1 : -1, net + turns, 0, null);
    }
    if (seen instanceof Seen.Rested rest) {
      return rest.anew()
          ? new RodHistory(0, 0, 0, 0, null)
          : new RodHistory(moves, way, net, 0, null);
    }
    return this;
  }
}
