package quarterturn.session;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.Turn;

/**
 * Which turns are left where later ones go back the way that earlier ones came. What nobody is sure
 * of is never one to be undone, and undoes others: so no rod goes back further than it came.
 */
public final class TurnsLeft {
  private static final double NONE = 1e-6;

  private final List<Turn> left = new ArrayList<>();

  /** Adds a later turn. */
  public void then(Turn turn, boolean sure) {
    double more = turn.turns();
    while (Math.abs(more) > NONE && !left.isEmpty() && more * last() < 0) {
      double both = more + left.remove(left.size() - 1).turns();
      boolean over = both * more > 0;
      if (!over && Math.abs(both) > NONE) {
        left.add(new Turn(both));
      }
      more = over ? both : 0;
    }
    if (sure && Math.abs(more) > NONE) {
      left.add(new Turn(more));
    }
  }

  private double last() {
    return left.get(left.size() - 1).turns();
  }

  /** The turns that no later one has undone, the oldest first. The last is undone first. */
  public List<Turn> turns() {
    return List.copyOf(left);
  }
}
