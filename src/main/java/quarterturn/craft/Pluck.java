package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Worded;

/**
 * A player's stroke: the string is pushed toward the frets or pulled away from them at one place,
 * and let go.
 *
 * <p>Ideal string, released from a triangle of height {@code a = F d (l - d) / (T l)}, where l is
 * its speaking length and d the place of the stroke from the saddle. By d'Alembert's solution it
 * then stays within the parallelogram made by the triangle and its point reflection (textbook).
 * Pushed, it is deepest over the frets as the triangle, with its apex near the bridge. Pulled, it
 * is deepest as the reflection, with its apex at distance d from the stop. The share B of the
 * stroke comes down as the other one of the two.
 *
 * <p>It leaves out stiffness, damping and the sideways part of the motion. B is a player's own
 * constant: nobody can look it up, it has to be calibrated by ear against a reading (0 for a stroke
 * square to the board that swings as the ideal string does, 1 for one that comes down whole either
 * way).
 *
 * @param force across the string, square to the board, zero or more
 * @param fromSaddle place of the stroke, above zero
 * @param way to which side the string is drawn before it is let go
 * @param returnShare B, from 0 to 1
 */
public record Pluck(Force force, Length fromSaddle, Way way, double returnShare) {
  /** The side to which a stroke draws the string. */
  public enum Way implements Worded {
    /** Toward the board. */
    PUSHED,
    /** Away from the board. */
    PULLED
  }

  public Pluck {
    if (!(force.newtons() >= 0)) {
      throw new NotUnderstoodException("a stroke's force must be zero or more");
    }
    if (!(fromSaddle.mm() > 0)) {
      throw new NotUnderstoodException("a stroke's distance from the saddle must be above zero");
    }
    if (!(returnShare >= 0 && returnShare <= 1)) {
      throw new NotUnderstoodException("the share that returns lies between 0 and 1");
    }
  }

  /**
   * Height of the triangle at the moment of release, in millimetres.
   *
   * @param speakingMm length of the string from its stop to the saddle
   * @throws NotUnderstoodException where the stroke's place is not on that length
   */
  public double amplitudeMm(Force tension, double speakingMm) {
    double d = fromSaddle.mm();
    if (!(tension.newtons() > 0)) {
      throw new NotUnderstoodException("a string's tension must be above zero");
    }
    if (!(d < speakingMm)) {
      throw new NotUnderstoodException("the stroke must fall between the stop and the saddle");
    }
    return force.newtons() * d * (speakingMm - d) / (tension.newtons() * speakingMm);
  }

  /**
   * How far the string comes down at {@code fromStopMm} from its stop, in millimetres: the larger
   * of what the stroke reaches and what returns.
   *
   * @param amplitudeMm as {@link #amplitudeMm} gives it
   */
  public double depthMm(double amplitudeMm, double speakingMm, double fromStopMm) {
    double d = fromSaddle.mm();
    double pushed = triangle(speakingMm, speakingMm - d, fromStopMm);
    double pulled = triangle(speakingMm, d, fromStopMm);
    return amplitudeMm
        * (way == Way.PUSHED
            ? Math.max(pushed, returnShare * pulled)
            : Math.max(pulled, returnShare * pushed));
  }

  /**
   * A triangle of height one over {@code length} with its apex at {@code apex}, read at {@code u}.
   */
  static double triangle(double length, double apex, double u) {
    return u <= apex ? u / apex : (length - u) / (length - apex);
  }
}
