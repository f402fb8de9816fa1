package quarterturn.craft.rod;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/**
 * A sum of what happened to a neck since its last long rest.
 *
 * @param moves turns of the rod
 * @param way of the last one, 1 tightened, -1 loosened, 0 where there was none
 * @param onward how many of the last ones went that way, in a row
 * @param net of all turns, plus tightened
 * @param readings since the last turn or rest
 * @param reading the last one, or null where none was taken since then
 */
record RodHistory(
    int moves, int way, int onward, double net, int readings, @Nullable Bracket reading) {
  private static final RodHistory NOTHING = new RodHistory(0, 0, 0, 0, 0, null);

  static RodHistory of(List<Seen> story) {
    RodHistory course = NOTHING;
    for (Seen seen : story) {
      course = course.then(seen);
    }
    return course;
  }

  private RodHistory then(Seen seen) {
    if (seen instanceof Seen.Read read) {
      return new RodHistory(moves, way, onward, net, readings + 1, read.relief());
    }
    if (seen instanceof Seen.Turned turned && turned.turn().turns() != 0) {
      double turns = turned.turn().turns();
      int now = turns > 0 ? 1 : -1;
      return new RodHistory(moves + 1, now, now == way ? onward + 1 : 1, net + turns, 0, null);
    }
    if (seen instanceof Seen.Rested rest) {
      return rest.anew() ? NOTHING : new RodHistory(moves, way, onward, net, 0, null);
    }
    return this;
  }
}
