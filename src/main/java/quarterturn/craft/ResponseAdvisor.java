package quarterturn.craft;

import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/**
 * Advice from the window's middle, the reading's bracket and the response of the neck.
 *
 * <p>The turn is {@code (middle of the reading - middle of the window) / response}, rounded toward
 * zero to sixteenths of a turn, at least one sixteenth and at most what is allowed. Rounding toward
 * zero, because a turn too few costs another cycle and a turn too many costs the neck. Where the
 * string touches, the size of the back bow is unknown and zero stands for it, so the true need can
 * only be larger.
 *
 * <p>The expected range takes the ends of the bracket with the response one standard deviation up
 * and down.
 */
public final class ResponseAdvisor implements Advisor {
  @Override
  public Advice advise(Question q) {
    double error = q.reading().middleMm() - q.window().middleMm();
    if (inside(q.reading(), q.window()) || q.most().turns() < Turn.SIXTEENTH.turns() - 1e-9) {
      return new Advice(Turn.NONE, "The reading stands in the window.");
    }
    RodResponse response = RodResponse.of(q.prior(), q.moves());
    double wanted = sixteenths(Math.abs(error) / response.mmPerQuarter() / 4);
    double size = Math.max(1 / 16.0, Math.min(sixteenths(q.most().turns()), wanted));
    Turn turn = new Turn(error > 0 ? size : -size);
    return new Advice(turn, why(q, turn, response));
  }

  @Override
  public Range expect(Question q, Turn turn) {
    RodResponse response = RodResponse.of(q.prior(), q.moves());
    double quarters = turn.turns() * 4;
    double slow = response.mmPerQuarter() * Math.exp(-response.sigma());
    double fast = response.mmPerQuarter() * Math.exp(response.sigma());
    double low = q.reading().lowMm() - quarters * (quarters > 0 ? fast : slow);
    double high = q.reading().highMm() - quarters * (quarters > 0 ? slow : fast);
    return new Range(low <= 0 ? Double.NEGATIVE_INFINITY : low, Math.max(high, 0));
  }

  private static double sixteenths(double turns) {
    return Math.floor(turns * 16 + 1e-9) / 16;
  }

  private static boolean inside(Bracket reading, Window window) {
    return reading.lowMm() >= window.lowMm() - 1e-9 && reading.highMm() <= window.highMm() + 1e-9;
  }

  private static String why(Question q, Turn turn, RodResponse response) {
    String move =
        turn.turns() > 0
            ? "The gap is larger than it should be, and tightening makes it smaller."
            : "The gap is smaller than it should be, and loosening makes it larger.";
    String source =
        response.observed() == 0
            ? "How far this neck moves is not known yet; most move about "
                + Decimals.print(q.prior().mmPerQuarter(), 2)
                + " mm for a quarter turn."
            : "Going by its turns so far, this neck moves about "
                + Decimals.print(response.mmPerQuarter(), 2)
                + " mm for a quarter turn.";
    return move + " " + source;
  }
}
