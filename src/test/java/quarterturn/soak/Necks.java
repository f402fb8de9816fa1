package quarterturn.soak;

import java.util.Locale;
import java.util.Random;

/** The necks of a round's bench as its player sees them; of invented numbers. */
final class Necks {
  private final Random random;
  private double gap;
  private final double response;

  Necks(Random random) {
    this.random = random;
    gap = -0.1 + random.nextDouble();
    response = random.nextInt(5) == 0 ? 0 : 0.4 + random.nextDouble();
  }

  /**
   * The lower leaf of two in steps of 0.05 mm, in hundredths; negative where the string touches.
   */
  int leaf() {
    double read = random.nextInt(12) == 0 ? random.nextDouble() * 2 : gap;
    return read <= 0 ? -1 : (int) Math.floor(read / 0.05) * 5;
  }

  /** The reading as it is typed. */
  String typed() {
    int low = leaf();
    return low < 0
        ? "touches"
        : String.format(Locale.ROOT, "%.2f passes %.2f lifts", low / 100.0, (low + 5) / 100.0);
  }

  void turn(double turns) {
    gap -= turns * response;
  }

  String feel() {
    return switch (random.nextInt(40)) {
      case 0 -> "jammed";
      case 1 -> "noise";
      case 2 -> "slipped";
      case 3, 4 -> "stiff";
      case 5, 6 -> "free";
      default -> "smooth";
    };
  }
}
