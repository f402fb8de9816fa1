package quarterturn.rehearsal.simulated;

import java.util.SplittableRandom;

/**
 * Draws random necks to simulate. The same random gives the same necks.
 *
 * <p>Response lognormal about 0.19 mm for a quarter turn, sigma 0.45; slack up to 0.08 turn in 40
 * of 100; relief even from -0.25 to 1.0 mm: estimates, no source.
 */
public final class Draw {
  private static final double RESPONSE_MM = 0.19;
  private static final double SIGMA = 0.45;
  private static final double WITH_SLACK = 0.4;
  private static final double SLACK_TURNS = 0.08;
  private static final double LOWEST_MM = -0.25;
  private static final double HIGHEST_MM = 1.0;
  private static final double SOUND = 2 / 3.0;

  private Draw() {}

  /** A random neck with this fault, or a sound one. */
  public static NeckTraits neck(NeckFault fault, SplittableRandom random) {
    return neck(fault, LOWEST_MM, HIGHEST_MM, random);
  }

  /** A random neck with this fault, whose first reading is likely to be {@code gap}. */
  public static NeckTraits neck(NeckFault fault, FirstGap gap, SplittableRandom random) {
    double leaf = Feelers.USUAL.stepMm();
    return switch (gap) {
      case READABLE, NOT_READ -> neck(fault, leaf, HIGHEST_MM, random);
      case UNDER_A_LEAF -> neck(fault, 0, leaf, random);
      case TOUCHING -> neck(fault, LOWEST_MM, 0, random);
    };
  }

  /** A random neck whose relief lies between two bounds in millimetres. */
  static NeckTraits neck(NeckFault fault, double lowMm, double highMm, SplittableRandom random) {
    return NeckTraits.of(
        lowMm + (highMm - lowMm) * random.nextDouble(),
        RESPONSE_MM * Math.exp(SIGMA * random.nextGaussian()),
        random.nextDouble() < WITH_SLACK ? SLACK_TURNS * random.nextDouble() : 0,
        fault);
  }

  /** A random neck, sound in two of three draws. */
  public static NeckTraits any(SplittableRandom random) {
    NeckFault[] faults = NeckFault.values();
    boolean sound = random.nextDouble() < SOUND;
    return neck(sound ? NeckFault.NONE : faults[1 + random.nextInt(faults.length - 1)], random);
  }
}
