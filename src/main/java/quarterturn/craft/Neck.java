package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A neck's curve.
 *
 * <p>The neck is fixed to the body at the joint fret and bends by small slopes (beam theory, {@code
 * y'' = kappa}): with {@link Bend.Uniform} the fret tops stand at {@code y(x) = kappa/2 (x_J -
 * x)^2} above the body's plane, and at zero beyond the joint. A gap read over fret m with the
 * string held at h and H is the chord less the board: {@code y_h + (y_H - y_h)(x_m - x_h)/(x_H -
 * x_h) - y_m}; held at 1 and J that makes {@code kappa = 2 r / ((x_J - x_m)(x_m - x_1))}.
 *
 * <p>It fails for a body-end rise, a hump, a twist, or slopes beyond a few hundredths.
 *
 * @param joint the fret where the neck meets the body
 * @param curvature largest curvature, per millimetre; plus for forward bow
 */
public record Neck(Scale scale, int joint, Bend bend, double curvature) {
  public Neck {
    if (joint < 2 || joint > Scale.MOST_FRETS) {
      throw new NotUnderstoodException(
          "a joint fret must lie between 2 and " + Scale.MOST_FRETS + ", not " + joint);
    }
    if (!Double.isFinite(curvature)) {
      throw new IllegalArgumentException("a curvature must be finite");
    }
  }

  /** An evenly bent neck from one relief reading. */
  public static Neck uniform(Scale scale, int joint, Length relief, Held held) {
    return bent(scale, joint, new Bend.Uniform(), relief, held);
  }

  /** A neck that bends around one fret, from one relief reading. */
  public static Neck peaked(Scale scale, int joint, int peak, Length relief, Held held) {
    return bent(scale, joint, new Bend.Peaked(scale.fretMm(peak)), relief, held);
  }

  /** Straight. */
  public static Neck straight(Scale scale, int joint) {
    return new Neck(scale, joint, new Bend.Uniform(), 0);
  }

  /** A neck of this bend from one relief reading. */
  public static Neck bent(Scale scale, int joint, Bend bend, Length relief, Held held) {
    Neck unit = new Neck(scale, joint, bend, 1);
    return unit.bentBy(relief.mm() / unit.gapWithinBow(held));
  }

  /** The same neck with another curvature, per millimetre. */
  public Neck bentBy(double newCurvature) {
    return new Neck(scale, joint, bend, newCurvature);
  }

  /** Height of the top of fret {@code n} above the body's plane, in millimetres; 0 is the nut. */
  public double fretTopMm(int n) {
    return curvature * bend.height(scale.fretMm(n), scale.fretMm(joint));
  }

  /**
   * The relief that would be read; minus for back bow, where a gauge only finds that it touches.
   */
  public Length relief(Held held) {
    return Length.mm(gapMm(held));
  }

  /** The gap where it shows the bow: read between the nut and the joint, where it is above zero. */
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
