package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Advice;
import quarterturn.craft.Advisor;
import quarterturn.craft.Decision;
import quarterturn.craft.Range;
import quarterturn.unit.Turn;

/** Knows its neck: straight to the middle of the window, in sixteenths. Nobody can do better. */
final class Knowing implements Advisor {
  private static final Range ANYTHING = new Range(Double.NEGATIVE_INFINITY, 9);

  private static final double SIXTEENTHS = 16;

  private final SimulatedNeck neck;

  Knowing(SimulatedNeck neck) {
    this.neck = neck;
  }

  @Override
  public Advice advise(Question q) {
    double turns = neck.turnTo(q.window().middleMm()).turns();
    double size = Math.max(1, Math.rint(Math.abs(turns) * SIXTEENTHS)) / SIXTEENTHS;
    return new Advice(new Turn(Math.copySign(Math.min(q.most().turns(), size), turns)), "");
  }

  @Override
  public Decision.@Nullable Reason fault(Question q) {
    return null;
  }

  @Override
  public Range expect(Question q, Turn turn) {
    return ANYTHING;
  }
}
