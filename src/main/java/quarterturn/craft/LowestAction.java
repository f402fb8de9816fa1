package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * The relief that allows the lowest action without contact.
 *
 * <p>For a pair of stopped fret k and fret n, the saddle height that just clears is linear in the
 * neck's curvature: {@code s(kappa) = y_k + (depth + y_n - y_k)(L - x_k)/(x_n - x_k)}, since the
 * depth of the stroke does not depend on the bow. The open string is the pair of k = 0, whose y_k
 * is the bottom of the nut slot. The action at fret 12 for it is linear too, so the lowest clear
 * action is the upper envelope of straight lines in kappa, which is convex. Its minimum is found
 * exactly by cutting: keep one falling and one rising line, go to where they cross, and replace one
 * by the line that stands highest there, until none stands higher.
 *
 * <p>Pushed, with nothing returning (B = 0), every pair of frets asks for the same saddle over a
 * straight neck, {@code F d / T}, so straight is best; the more returns, the more relief pays. Both
 * rest on {@link Pluck}'s assumptions.
 *
 * @param relief read as the given convention; a straight neck is 0
 * @param action12 the lowest clear action at fret 12 with that relief
 * @param action12Straight the lowest clear action at fret 12 over a straight neck
 */
public record LowestAction(Length relief, Length action12, Length action12Straight) {
  private static final int MOST_CUTS = 1000;

  /**
   * The least slope of a line that is not level but for rounding, in mm for a curvature of 1 per
   * mm.
   */
  private static final double LEVEL = 1e-6;

  /** The relative difference below which two actions count as equal. */
  private static final double SAME = 1e-12;

  /**
   * Finds the relief that allows the lowest action without contact.
   *
   * @param last the last fret of the board, 2 or more
   * @throws NotUnderstoodException where a stopped fret leaves the stroke's place no string
   */
  public static LowestAction of(
      Scale scale, int joint, Held held, Length nutHeight, Force tension, Pluck pluck, int last) {
    Envelope envelope = Envelope.of(Neck.straight(scale, joint), nutHeight, tension, pluck, last);
    double action = envelope.lowest();
    double kappa = envelope.nearestToStraight(action);
    Neck neck = Neck.straight(scale, joint).bentBy(kappa);
    return new LowestAction(neck.relief(held), Length.mm(action), Length.mm(envelope.highest(0)));
  }

  /**
   * The lines {@code action12 = at0 + slope kappa}, one for each pair of frets.
   *
   * @param at0 in millimetres
   * @param slope in millimetres for a curvature of 1 per mm
   */
  private record Envelope(double[] at0, double[] slope) {
    static Envelope of(Neck straight, Length nutHeight, Force tension, Pluck pluck, int last) {
      if (last < 2 || last > Scale.MOST_FRETS) {
        throw new NotUnderstoodException(
            "the last fret must lie between 2 and " + Scale.MOST_FRETS + ", not " + last);
      }
      Scale scale = straight.scale();
      Neck unit = straight.bentBy(1);
      double share = Scale.share(12);
      double nutAt0 = nutHeight.mm() * (1 - share);
      double own = unit.fretTopMm(0) * (1 - share) - unit.fretTopMm(12);
      int pairs = last * (last + 1) / 2;
      double[] at0 = new double[pairs];
      double[] slope = new double[pairs];
      int i = 0;
      for (int k = 0; k < last; k++) {
        double slot = k == 0 ? nutHeight.mm() : 0;
        double speaking = scale.speakingMm(k);
        double amplitude = pluck.amplitudeMm(tension, speaking);
        double top = unit.fretTopMm(k);
        for (int n = k + 1; n <= last; n++) {
          double u = scale.fretMm(n) - scale.fretMm(k);
          double lever = speaking / u;
          double depth = pluck.depthMm(amplitude, speaking, u);
          at0[i] = nutAt0 + share * (slot + (depth - slot) * lever);
          slope[i] = own + share * (top + (unit.fretTopMm(n) - top) * lever);
          i++;
        }
      }
      return new Envelope(at0, slope);
    }

    /** The lowest clear action. */
    double lowest() {
      int falling = steepest(-1);
      int rising = steepest(1);
      if (!(slope[falling] < 0 && slope[rising] > 0)) {
        throw new NotUnderstoodException(
            "a fingerboard that ends so early has no lowest action; the last fret must be higher");
      }
      for (int cut = 0; cut < MOST_CUTS; cut++) {
        double kappa = crossing(falling, rising);
        int top = top(kappa);
        double above = value(top, kappa) - value(falling, kappa);
        if (level(top) || above <= same(value(top, kappa))) {
          return value(top, kappa);
        }
        if (slope[top] < 0) {
          falling = top;
        } else {
          rising = top;
        }
      }
      throw new IllegalStateException("the lowest action was not found");
    }

    /** The curvature nearest to none at which this action is clear. */
    double nearestToStraight(double action) {
      double from = Double.NEGATIVE_INFINITY;
      double to = Double.POSITIVE_INFINITY;
      for (int i = 0; i < at0.length; i++) {
        double at = (action + same(action) - at0[i]) / slope[i];
        if (!level(i)) {
          from = slope[i] < 0 ? Math.max(from, at) : from;
          to = slope[i] > 0 ? Math.min(to, at) : to;
        }
      }
      return Math.min(to, Math.max(from, 0));
    }

    /** Whether the relief does not matter to a pair: of frets k and 12 - k it never does. */
    private boolean level(int line) {
      return Math.abs(slope[line]) < LEVEL;
    }

    double highest(double kappa) {
      return value(top(kappa), kappa);
    }

    private static double same(double action) {
      return SAME * Math.max(1, Math.abs(action));
    }

    private double crossing(int falling, int rising) {
      return (at0[falling] - at0[rising]) / (slope[rising] - slope[falling]);
    }

    private double value(int line, double kappa) {
      return at0[line] + slope[line] * kappa;
    }

    private int top(double kappa) {
      int top = 0;
      for (int i = 1; i < at0.length; i++) {
        if (value(i, kappa) > value(top, kappa)) {
          top = i;
        }
      }
      return top;
    }

    /** The line that rises (1) or falls (-1) most. */
    private int steepest(int way) {
      int best = 0;
      for (int i = 1; i < slope.length; i++) {
        if (way * slope[i] > way * slope[best]) {
          best = i;
        }
      }
      return best;
    }
  }
}
