package quarterturn;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.List;
import java.util.Random;

/**
 * What a terminal may send that no person typed, drawn by chance: bytes, reports, answers to
 * queries nobody asked, pastes with and without an end. No byte of it is a signal, so that whoever
 * sends it decides when it is interrupted.
 */
public final class Hostile {
  private static final List<String> REPORTS =
      List.of(
          "\u001b[<35;10;5M",
          "\u001b[<0;500;200m",
          "\u001b[M !!",
          "\u001b[I",
          "\u001b[O",
          "\u001b[?62;22c",
          "\u001b[0n",
          "\u001b[24;80R",
          "\u001b[?2004;1$y",
          "\u001b[8;24;80t",
          "\u001b]11;rgb:ffff/ffff/ffff\u0007",
          "\u001b]10;rgb:0000/0000/0000\u001b\\",
          "\u001bP>|terminal 1.0\u001b\\",
          "\u001b[A",
          "\u001b[6~",
          "\u001b");

  private final Random random;

  public Hostile(long seed) {
    random = new Random(seed);
  }

  /** The next bytes, at least one and at most so many. */
  public byte[] next(int most) {
    int size = 1 + random.nextInt(most);
    StringBuilder out = new StringBuilder();
    switch (random.nextInt(5)) {
      case 0 -> bytes(out, size);
      case 1 -> bytes(out, 1 + random.nextInt(40));
      case 2 -> {
        while (out.length() < size) {
          out.append(REPORTS.get(random.nextInt(REPORTS.size())));
        }
      }
      case 3 -> {
        out.append("\u001b[200~");
        bytes(out, size);
        out.append(random.nextInt(3) == 0 ? "" : "\u001b[201~");
      }
      default -> out.append("0.30 passes 0.35 lifts\r".repeat(1 + size / 23));
    }
    return out.toString().getBytes(ISO_8859_1);
  }

  /** A size of a window, from one cell to more than any has. */
  public int[] size() {
    boolean small = random.nextInt(4) == 0;
    return small
        ? new int[] {1 + random.nextInt(12), 1 + random.nextInt(5)}
        : new int[] {1 + random.nextInt(500), 1 + random.nextInt(200)};
  }

  /** Whether something happens that happens one time in so many. */
  public boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  private void bytes(StringBuilder out, int count) {
    for (int i = 0; i < count; i++) {
      int next = random.nextInt(0x100);
      boolean signal = next == 0x03 || next == 0x1a || next == 0x1c;
      out.append((char) (signal ? ' ' : next));
    }
  }
}
