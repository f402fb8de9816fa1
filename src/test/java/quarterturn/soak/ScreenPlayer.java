package quarterturn.soak;

import java.util.List;
import java.util.Random;

/**
 * Presses keys on the full screen: what what was drawn last seems to ask for, or any that matter.
 */
final class ScreenPlayer implements Player {
  private static final List<String> KEYS =
      List.of(
          "\r",
          "\r",
          "\r",
          "\r",
          "u",
          "u",
          "1\r",
          "2\r",
          "3\r",
          "4",
          "\u001b",
          "q",
          "qy",
          "qn",
          "w",
          "?",
          "o",
          "b",
          "z",
          "h",
          "m",
          "e",
          "s",
          "n",
          "y",
          "-\r",
          ":",
          ":next\r",
          "\t",
          "\u001b[A",
          "\u001b[B",
          "\u001b[C",
          "\u001b[D",
          "\u001b[5~",
          "\u001b[6~",
          "\u001b[H",
          "\u001b[F",
          "\u001b[3~",
          "\u007f",
          "\u001bOP",
          "\u001bOQ",
          "\u001bOR",
          "\u001bOS",
          "\u001b[15~",
          "\u001b[17~",
          "\u001b[18~",
          "\u001b[19~",
          "\u001b[20~",
          "\u001b[21~",
          "\u001b[24~",
          "1/8 smooth\r",
          "touches\r",
          "50\r",
          "1 0.30, 2 0.25\r",
          "\f",
          "\u0015",
          "\u001b[18~relief .37 low .33 high\r",
          "\u001b[Z");

  private final Random random;
  private final Necks necks;

  ScreenPlayer(Random random, Necks necks) {
    this.random = random;
    this.necks = necks;
  }

  @Override
  public String next(String out) {
    String tail = out.substring(Math.max(0, out.length() - 3000));
    if (random.nextInt(4) > 0) {
      if (tail.contains("u understood") || tail.contains("Press u")) {
        return "u";
      } else if (tail.contains("gap in mm")) {
        return necks.typed() + "\r";
      } else if (tail.contains("Enter turned") || random.nextInt(3) > 0) {
        return "\r";
      }
    }
    return KEYS.get(random.nextInt(KEYS.size()));
  }
}
