package quarterturn.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quarterturn.unit.Bracket;

/**
 * What all benches predicted and read at one step. A prediction counts here only when the bench has
 * shown its reading, and a reading only when it is no longer hidden: a board may hang on a wall.
 *
 * @param step as PROCEDURE/STEP
 * @param locked how many predictions are locked, the hidden ones too
 * @param directions how many predicted which way
 * @param sizes that were predicted, the smallest first
 * @param readings the gauge readings, the smallest first
 */
public record StepSpread(
    String step,
    int locked,
    Map<Direction, Integer> directions,
    List<Double> sizes,
    List<Bracket> readings) {
  public StepSpread {
    directions = Map.copyOf(directions);
    sizes = List.copyOf(sizes);
    readings = List.copyOf(readings);
  }

  /** By step, in the order of their names. */
  static List<StepSpread> of(List<BenchLesson> benches) {
    Map<String, List<Round>> bySteps = new TreeMap<>();
    for (BenchLesson bench : benches) {
      for (Round round : bench.rounds()) {
        bySteps.computeIfAbsent(round.opened().spot().key(), key -> new ArrayList<>()).add(round);
      }
    }
    List<StepSpread> out = new ArrayList<>();
    bySteps.forEach((step, rounds) -> out.add(of(step, rounds)));
    return out;
  }

  private static StepSpread of(String step, List<Round> rounds) {
    Map<Direction, Integer> directions = new EnumMap<>(Direction.class);
    List<Double> sizes = new ArrayList<>();
    List<Bracket> readings = new ArrayList<>();
    for (Round round : rounds) {
      if (round.shown() != null) {
        for (Prediction prediction : round.predictions().values()) {
          directions.merge(prediction.direction(), 1, Integer::sum);
          sizes.add(prediction.size());
        }
      }
      if (round.unveiled() != null) {
        readings.addAll(round.blind().values());
      } else if (round.result() instanceof Value.Gap gap) {
        readings.add(gap.bracket());
      }
    }
    int locked = rounds.stream().mapToInt(r -> r.predictions().size()).sum();
    sizes.sort(Double::compare);
    Spread spread = Spread.of(readings, readings.size());
    return new StepSpread(
        step, locked, directions, sizes, spread == null ? List.of() : spread.readings());
  }
}
