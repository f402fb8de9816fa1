package quarterturn.rehearsal;

import quarterturn.craft.rod.Advice;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.unit.Turn;

/**
 * An advisor that knows the simulated neck and turns straight to the middle of the window, in
 * sixteenths: the best that can be done.
 */
public record Knowing(SimulatedNeck neck) implements Unsuspecting {
  private static final double SIXTEENTHS = 16;

  @Override
  public Advice advise(Question q) {
    double turns = neck.turnTo(q.window().middleMm()).turns();
    double size = Math.max(1, Math.rint(Math.abs(turns) * SIXTEENTHS)) / SIXTEENTHS;
    return new Advice(new Turn(Math.copySign(Math.min(q.most().turns(), size), turns)), "");
  }
}
