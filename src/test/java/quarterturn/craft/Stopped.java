package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Length;

/** The clearance of a stopped string at rest: what a map of contacts says of no stroke at all. */
final class Stopped {
  private Stopped() {}

  /**
   * The string stopped at fret {@code k}, 0 for the open one, above a later fret {@code n}, in mm.
   */
  static double mm(StringLine line, int k, int n) {
    Pluck none = new Pluck(Force.newtons(0), Length.mm(1), Pluck.Way.PUSHED, 0);
    return ContactMap.of(line, Force.newtons(100), none, Math.max(2, n)).marginMm(k, n);
  }
}
