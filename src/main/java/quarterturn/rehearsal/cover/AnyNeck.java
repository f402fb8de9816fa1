package quarterturn.rehearsal.cover;

import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Verdict;
import quarterturn.unit.Bracket;

/** A simulated neck of any kind, read with leaves in steps of 0.05 mm and an occasional mistake. */
final class AnyNeck {
  private static final double LEAF_MM = 0.05;

  private final SplittableRandom random;
  private final NeckConstraint temper;
  private final double response;
  private final double twist;
  private double gap;

  /**
   * Draws a neck; all the numbers are invented.
   *
   * @param stands how its relief should stand to the window at first, or null
   */
  AnyNeck(NeckConstraint temper, @Nullable Verdict stands, Window window, SplittableRandom random) {
    this.random = random;
    this.temper = temper;
    double some = random.nextDouble();
    this.gap = stands == null ? -0.4 + 1.6 * some : gap(stands, window, some);
    if (temper == NeckConstraint.TOUCHING) {
      this.gap = -0.6 - some;
    } else if (temper == NeckConstraint.FAR) {
      this.gap = random.nextInt(3) == 0 ? 0.05 : window.highMm() + 0.5 + some;
    }
    boolean answers = temper != NeckConstraint.DEAD && temper != NeckConstraint.REVERSED;
    if (!answers && random.nextInt(4) > 0) {
      // What does not answer as told is seen only where there is a gap to begin with.
      this.gap = window.highMm() + 0.2 + some / 2;
    }
    this.response =
        switch (temper) {
          case SOUND, TWISTED -> 0.1 + 0.2 * random.nextDouble();
          case DEAD -> 0;
          case REVERSED -> -0.3;
          case TOUCHING, FAR -> 0.02 + 0.1 * random.nextDouble();
        };
    this.twist = temper == NeckConstraint.TWISTED ? 0.25 : 0;
  }

  private static double gap(Verdict stands, Window window, double some) {
    return switch (stands) {
      case NOT_MEASURED, IN -> window.middleMm();
      case TOUCHES -> -0.5 * some;
      case BELOW -> window.lowMm() * some;
      case UNDECIDED -> window.highMm() + 0.01;
      case ABOVE -> window.highMm() + 0.05 + some;
    };
  }

  NeckConstraint temper() {
    return temper;
  }

  /** Moves the relief to where it stands to the window as given. */
  void stand(Verdict stands, Window window) {
    gap = gap(stands, window, random.nextDouble());
  }

  /** Turns the rod by a number of turns; plus tightens. */
  void turn(double turns) {
    gap -= turns * 4 * response;
  }

  /** Whether the relief differs between the lowest and the highest string. */
  boolean twisted() {
    return twist > 0;
  }

  /** A reading on the lowest or the highest string. */
  Bracket read(boolean highest) {
    double slip = random.nextInt(10) == 0 ? 0.24 * (random.nextDouble() - 0.5) : 0;
    Bracket exact = leaves(gap + (highest ? twist : 0) + slip);
    if (exact.bounded() && random.nextInt(6) == 0) {
      double more = random.nextInt(3) == 0 ? 0.4 : 0.1;
      return new Bracket(exact.lowMm(), round(exact.highMm() + more));
    }
    return exact;
  }

  /** The bracket a set of leaves gives for a gap in millimetres. */
  static Bracket leaves(double gap) {
    if (gap <= 0) {
      return Bracket.touches();
    }
    double low = Math.floor(gap / LEAF_MM + 1e-9) * LEAF_MM;
    return low < LEAF_MM ? Bracket.lifts(LEAF_MM) : new Bracket(round(low), round(low + LEAF_MM));
  }

  /** Readings that stand to a window in every way there is. */
  static List<Bracket> all(Window window) {
    double low = window.lowMm();
    double high = window.highMm();
    return List.of(
        leaves(window.middleMm()),
        Bracket.touches(),
        new Bracket(round(low / 3), round(low / 2)),
        new Bracket(round(high + 0.1), round(high + 0.15)),
        new Bracket(round(low / 4), round(low + 0.01)),
        new Bracket(round(high - 0.01), round(high + 0.1)),
        new Bracket(round(high - 0.05), round(high + 0.01)),
        new Bracket(round(low / 2), round(high + 0.1)));
  }

  private static double round(double mm) {
    return Math.rint(mm * 100) / 100;
  }
}
