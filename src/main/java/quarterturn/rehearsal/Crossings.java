package quarterturn.rehearsal;

import quarterturn.craft.Window;

/** Counts how often a neck was taken from one side of its window to the other. */
final class Crossings {
  private final Window window;
  private int side;
  private int count;

  Crossings(Window window) {
    this.window = window;
  }

  /** Where a relief in millimetres lies: -1 below the window, 0 in it, 1 above it. */
  static int side(Window window, double reliefMm) {
    return reliefMm < window.lowMm() ? -1 : reliefMm > window.highMm() ? 1 : 0;
  }

  /** Looks at the true relief; a stop inside the window between both sides still is a crossing. */
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
