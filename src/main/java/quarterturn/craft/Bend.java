package quarterturn.craft;

import quarterturn.unit.NotUnderstoodException;

/**
 * The shape of a neck that is fixed to the body at a joint and bends by one unit: how high the fret
 * tops stand above the body's plane. Multiply by a neck's own amount.
 *
 * <p>Small slopes, {@code y'' = curvature}, tangent to the body's plane at the joint and flat
 * beyond it. So {@code y(x) = integral from x to x_J of (t - x) curvature(t) dt}.
 */
public sealed interface Bend {
  /**
   * Height of the board at {@code x}, in millimetres for a largest curvature of 1 per mm.
   *
   * @param x from the nut, in millimetres
   * @param joint the joint's place from the nut, in millimetres
   */
  double height(double x, double joint);

  /**
   * The same curvature everywhere between nut and joint: {@code y = (x_J - x)^2 / 2}. The usual
   * assumption; a string pulling on a neck of even section with a rod along it comes near.
   */
  record Uniform() implements Bend {
    @Override
    public double height(double x, double joint) {
      double rest = Math.max(0, joint - x);
      return rest * rest / 2;
    }
  }

  /**
   * A curvature that rises from nothing at the nut to its peak at one place and falls to nothing at
   * the joint, in straight lines: a neck that gives way around one fret.
   *
   * @param peak from the nut, in millimetres, between nut and joint
   */
  record Peaked(double peak) implements Bend {
    @Override
    public double height(double x, double joint) {
      if (!(peak > 0 && peak < joint)) {
        throw new NotUnderstoodException("a bend's peak must lie between the nut and the joint");
      }
      if (x >= joint) {
        return 0;
      }
      if (x >= peak) {
        return falling(joint - x, joint);
      }
      // Beyond the peak the board goes on straight along its slope there, and bends on its own.
      double slope = (joint - peak) / 2;
      return falling(joint - peak, joint) + slope * (peak - x) + rising(x);
    }

    /** A curvature that grows as distance from the joint, integrated twice. */
    private double falling(double rest, double joint) {
      return rest * rest * rest / (6 * (joint - peak));
    }

    /** Integral from x to the peak of (t - x) t / peak. */
    private double rising(double x) {
      return (peak * peak / 3 - x * peak / 2 + x * x * x / (6 * peak));
    }
  }
}
