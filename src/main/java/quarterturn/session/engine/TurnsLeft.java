package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.Turn;

/** Which turns are left where later ones go back the way that earlier ones came. */
final class TurnsLeft {
  private static final double NONE = 1e-6;

  private TurnsLeft() {}

  /**
   * The turns that no later one has undone, wholly or in part. The last is undone first.
   *
   * @param turns the oldest first
   */
  static List<Turn> of(List<Turn> turns) {
    List<Turn> left = new ArrayList<>();
    for (Turn turn : turns) {
      double more = turn.turns();
      while (Math.abs(more) > NONE && !left.isEmpty() && more * last(left) < 0) {
        double both = more + left.remove(left.size() - 1).turns();
        boolean over = both * more > 0;
        if (!over && Math.abs(both) > NONE) {
          left.add(new Turn(both));
        }
        more = over ? both : 0;
      }
      if (Math.abs(more) > NONE) {
        left.add(new Turn(more));
      }
    }
    return List.copyOf(left);
  }

  private static double last(List<Turn> turns) {
    return turns.get(turns.size() - 1).turns();
  }
}
