package quarterturn.soak;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import quarterturn.Hostile;

/** What no person typed: rubbish, reports, stray answers to queries, and pastes. */
final class Noise {
  static final int LARGE = 48 << 10;

  private final Random random;
  private final Hostile hostile;

  Noise(Random random) {
    this.random = random;
    hostile = new Hostile(random.nextLong());
  }

  byte[] rubbish() {
    return hostile.next(200);
  }

  /**
   * A paste of up to 48 kB, rarely of a megabyte, with brackets around it or without.
   *
   * @param terminal whether it is typed at one; on a pipe each line of a megabyte is answered
   */
  byte[] paste(boolean terminal) {
    boolean huge = random.nextInt(40) == 0 && terminal;
    int size = huge ? 1 << 20 : 1 + random.nextInt(LARGE);
    String text =
        switch (random.nextInt(4)) {
          case 0 -> "0.30 passes 0.35 lifts\r".repeat(size / 23 + 1);
          case 1 -> "x".repeat(size);
          case 2 -> "u\r1\r\r0.30\r1/8 smooth\r".repeat(size / 22 + 1);
          default -> "\u00fcber \u4e00\u4e8c \ud83c\udfb8 \u202e\u200b\n".repeat(size / 22 + 1);
        };
    return (random.nextBoolean() ? text : "\u001b[200~" + text + "\u001b[201~")
        .getBytes(StandardCharsets.UTF_8);
  }
}
