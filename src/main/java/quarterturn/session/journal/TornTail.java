package quarterturn.session.journal;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * A last write of which a power cut left out a piece, though a later piece is there. What was left
 * out reads as zeros, from where the write began, or from the edge of a block, to the edge of one.
 */
final class TornTail {
  /** The smallest piece that a disk writes, in bytes. */
  private static final int BLOCK = 512;

  private TornTail() {}

  /**
   * Whether the rest of a file is such a write.
   *
   * @param start of a line that can't be used
   * @param end of that line
   */
  static boolean begins(byte[] file, int start, int end) {
    return lacksPiece(file, start, end) && atOnce(file, end + 1);
  }

  private static boolean lacksPiece(byte[] file, int start, int end) {
    int from = start;
    while (from < end && file[from] != 0) {
      from++;
    }
    int to = from;
    while (to < end && file[to] == 0) {
      to++;
    }
    return to > from && (from == start || from % BLOCK == 0) && to % BLOCK == 0;
  }

  /** Whether all lines from a place on have one time, as those written at once have. */
  private static boolean atOnce(byte[] file, int from) {
    Set<String> times = new HashSet<>();
    int start = from;
    int end = SummedLines.newline(file, start);
    while (end >= 0) {
      byte[] line = Arrays.copyOfRange(file, start, end);
      try {
        times.add(SummedLines.parse(line).path("at").asText());
      } catch (NotAnEventException e) {
        if (!lacksPiece(file, start, end)) {
          return false;
        }
      }
      start = end + 1;
      end = SummedLines.newline(file, start);
    }
    return times.size() <= 1;
  }
}
