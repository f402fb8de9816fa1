package quarterturn.lesson;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/**
 * Several readings of one gap, once all are in: first how far they lie apart, then their mean.
 *
 * @param readings the smallest first
 * @param extent from the lowest bound to the highest; null where they are open both ways
 * @param mean of the bounds; null where a reading has an open one
 */
public record Spread(List<Bracket> readings, @Nullable Bracket extent, @Nullable Bracket mean) {
  /** The spread of a blind round; null before everybody present has read. */
  public static @Nullable Spread of(Round round, Collection<String> present) {
    return round.unveiled() == null || !round.toRead(present).isEmpty()
        ? null
        : of(List.copyOf(round.blind().values()), round.blind().size());
  }

  /**
   * The spread of some readings; null before all are in.
   *
   * @param expected how many there will be
   */
  public static @Nullable Spread of(List<Bracket> readings, int expected) {
    if (readings.isEmpty() || readings.size() < expected) {
      return null;
    }
    List<Bracket> sorted =
        readings.stream()
            .sorted(
                Comparator.comparingDouble(Bracket::middleMm)
                    .thenComparingDouble(Bracket::lowMm)
                    .thenComparingDouble(Bracket::highMm))
            .toList();
    double low = sorted.stream().mapToDouble(Bracket::lowMm).min().orElseThrow();
    double high = sorted.stream().mapToDouble(Bracket::highMm).max().orElseThrow();
    boolean open = Double.isInfinite(low) && Double.isInfinite(high);
    Bracket mean =
        sorted.stream().allMatch(Bracket::bounded)
            ? new Bracket(
                sorted.stream().mapToDouble(Bracket::lowMm).average().orElseThrow(),
                sorted.stream().mapToDouble(Bracket::highMm).average().orElseThrow())
            : null;
    return new Spread(sorted, open ? null : new Bracket(low, high), mean);
  }

  /** Whether one gap would explain every reading. */
  public boolean agree() {
    double mostLow = readings.stream().mapToDouble(Bracket::lowMm).max().orElseThrow();
    double leastHigh = readings.stream().mapToDouble(Bracket::highMm).min().orElseThrow();
    return mostLow <= leastHigh;
  }

  /**
   * The spread in lines to show in this order: the readings, how far apart they lie, and only then
   * the mean.
   */
  public List<String> lines() {
    String all = readings.stream().map(Bracket::toString).collect(Collectors.joining("; "));
    String apart =
        agree()
            ? "One gap would explain them all."
            : "No one gap explains them all: talk about how each of you held and read.";
    String middle =
        mean == null
            ? "They have no mean, since a reading is open at one end."
            : "Their mean is " + rounded(mean) + ".";
    return List.of("You read " + all + ".", apart, middle);
  }

  /** A bracket rounded to 0.01 mm, since gauges are read no finer. */
  private static Bracket rounded(Bracket bracket) {
    return new Bracket(
        Math.rint(bracket.lowMm() * 100) / 100, Math.rint(bracket.highMm() * 100) / 100);
  }
}
