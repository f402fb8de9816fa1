package quarterturn.rehearsal;

import quarterturn.craft.Window;

/** Counts how often a neck's relief went from one side of its window to the other. */
public final class Crossings {
  private final Window window;
  private int side;
  private int count;

  Crossings(Window window) {
    this.window = window;
  }

  /** Side of the window on which a relief in millimetres lies: -1 below, 0 inside, 1 above. */
  public static int side(Window window, double reliefMm) {
    return reliefMm < window.lowMm() ? -1 : reliefMm > window.highMm() ? 1 : 0;
  }

  /**
   * Counts a crossing if the true relief is now on the side opposite to the last one seen outside.
   */
  void see(double reliefMm) {
    int now = side(window, reliefMm);
    if (now * side < 0) {
      count++;
    }
    side = now == 0 ? side : now;
  }

  int count() {
    return count;
  }
}
