package quarterturn.procedure.check;

import java.util.List;
import java.util.Locale;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/**
 * Checks all shipped procedures round after round, as {@code check --watch} does, and prints the
 * shortest round in milliseconds. Each round reads, walks and proves everything anew.
 */
public final class CheckRounds {
  private CheckRounds() {}

  /**
   * Ends after the first round that is short enough.
   *
   * @param args milliseconds that are short enough, and the most rounds
   */
  public static void main(String[] args) throws Exception {
    double enough = Double.parseDouble(args[0]);
    double best = Double.MAX_VALUE;
    List<String> ids = new Shelf(null).procedures();
    for (int round = Integer.parseInt(args[1]); round > 0 && best >= enough; round--) {
      long begin = System.nanoTime();
      Shelf shelf = new Shelf(null);
      Walks walks = new Walks();
      for (String id : ids) {
        if (!Checker.check(shelf, id, walks).findings().isEmpty()) {
          throw new IllegalStateException(id + " has findings");
        }
      }
      best = Math.min(best, (System.nanoTime() - begin) / 1e6);
    }
    System.out.printf(Locale.ROOT, "%d %.1f%n", ids.size(), best);
  }
}
