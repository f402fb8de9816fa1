package quarterturn.fault;

import java.util.SplittableRandom;

/**
 * What a power cut leaves of that which was not forced. By chance it is nothing, all, all up to
 * some moment, or some of it in no order.
 */
final class Survival {
  private static final int WAYS = 4;

  /** How many changes before the cut such a moment is, at most. */
  private static final int AGO = 40;

  private final SplittableRandom random;
  private final int way;
  private final long moment;

  Survival(SplittableRandom random, long now) {
    this.random = random;
    this.way = random.nextInt(WAYS);
    this.moment = now - random.nextInt(AGO);
  }

  /** Whether a change of that moment, a piece of a write or an entry of a folder, is kept. */
  boolean keeps(long when) {
    return switch (way) {
      case 0 -> false;
      case 1 -> true;
      case 2 -> when < moment;
      default -> random.nextBoolean();
    };
  }
}
