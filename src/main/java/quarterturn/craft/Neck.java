package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A neck's curve.
 *
 * <p>The neck is fixed to the body at the joint fret and bends by small slopes with one curvature
 * from nut to joint (beam theory, {@code y'' = kappa}): the fret tops stand at {@code y(x) =
 * kappa/2 (x_J - x)^2} above the body's plane, and at zero beyond the joint. That is the usual
 * assumption; a string pulling on a neck of even section with a rod along it comes near. A gap read
 * over fret m with the string held at h and H is the chord less the board: {@code y_h + (y_H -
 * y_h)(x_m - x_h)/(x_H - x_h) - y_m}; held at 1 and J that makes {@code kappa = 2 r / ((x_J -
 * x_m)(x_m - x_1))}.
 *
 * <p>It fails for a body-end rise, a hump, a twist, or slopes beyond a few hundredths.
 *
 * @param joint the fret where the neck meets the body
 * @param curvature between nut and joint, per millimetre; plus for forward bow
 */
public record Neck(Scale scale, int joint, double curvature) {
  public Neck {
    if (joint < 2 || joint > Scale.MOST_FRETS) {
      throw new NotUnderstoodException(
          "a joint fret must lie between 2 and " + Scale.MOST_FRETS + ", not " + joint);
    }
    if (!Double.isFinite(curvature)) {
      throw new IllegalArgumentException("a curvature must be finite");
    }
  }

  /** A neck from one relief reading. */
  public static Neck uniform(Scale scale, int joint, Length relief, Held held) {
    Neck unit = new Neck(scale, joint, 1);
    return unit.bentBy(relief.mm() / unit.gapWithinBow(held));
  }

  /** A neck without any bow. */
  public static Neck straight(Scale scale, int joint) {
    return new Neck(scale, joint, 0);
  }

  /** A neck of this scale and joint with a curvature per millimetre. */
  public Neck bentBy(double newCurvature) {
    return new Neck(scale, joint, newCurvature);
  }

  /** Height of the board above the body's plane, in millimetres, at {@code x} mm from the nut. */
  public double heightMm(double x) {
    double rest = Math.max(0, scale.fretMm(joint) - x);
    return curvature * (rest * rest / 2);
  }

  /** Height of the top of fret {@code n} above the body's plane, in millimetres; 0 is the nut. */
  public double fretTopMm(int n) {
    return heightMm(scale.fretMm(n));
  }

  /**
   * The relief that would be read; minus for back bow, where a gauge shows only that the string
   * touches.
   */
  public Length relief(Held held) {
    return Length.mm(gapMm(held));
  }

  /** The gap in millimetres, read between the nut and the joint, where it shows the bow. */
  double gapWithinBow(Held held) {
    if (held.readAt() >= joint) {
      throw new NotUnderstoodException(
          "a relief read over fret "
              + held.readAt()
              + " shows nothing of a bow that ends at the joint, fret "
              + joint);
    }
    return gapMm(held);
  }

  private double gapMm(Held held) {
    double low = scale.fretMm(held.low());
    double along = (scale.fretMm(held.readAt()) - low) / (scale.fretMm(held.high()) - low);
    double atLow = fretTopMm(held.low());
    double chord = atLow + (fretTopMm(held.high()) - atLow) * along;
    return chord - fretTopMm(held.readAt());
  }
}
