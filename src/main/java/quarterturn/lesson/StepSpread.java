package quarterturn.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import quarterturn.unit.Bracket;

/**
 * What all benches predicted and read at one step. A prediction counts here only when the bench has
 * shown its reading, and a reading only when it is no longer hidden: a desk may hang on a wall.
 *
 * @param step as PROCEDURE/STEP; with its time where a bench came there more than once, since a
 *     turn lies between
 * @param turn whether it is a turn
 * @param unit of what is predicted: that of the readings, or turn; empty while nothing was read
 * @param locked how many predictions are locked, the hidden ones too
 * @param directions how many predicted which way; a first reading has none
 * @param sizes that were predicted, the smallest first
 * @param readings the gauge readings, the smallest first
 */
public record StepSpread(
    String step,
    boolean turn,
    String unit,
    int locked,
    Map<Direction, Integer> directions,
    List<Double> sizes,
    List<Bracket> readings) {
  /** The spread of each step that some bench has come to, in the order of their names. */
  public static List<StepSpread> of(List<BenchLesson> benches) {
    Map<String, SortedMap<Integer, List<Round>>> bySteps = new TreeMap<>();
    for (BenchLesson bench : benches) {
      Map<String, Integer> times = new HashMap<>();
      for (Round round : bench.rounds()) {
        String key = bench.about(round).key();
        int reading = round.opened().turn() ? 0 : 1;
        // At one time the way of a turn comes before what the turn did.
        int order = 2 * times.merge(key + reading, 1, Integer::sum) + reading;
        bySteps
            .computeIfAbsent(key, k -> new TreeMap<>())
            .computeIfAbsent(order, o -> new ArrayList<>())
            .add(round);
      }
    }
    List<StepSpread> out = new ArrayList<>();
    bySteps.forEach(
        (step, orders) ->
            orders.forEach((order, rounds) -> out.add(of(name(step, order / 2), rounds))));
    return out;
  }

  /** The name of a step at a bench's first or later visit. */
  public static String name(String step, int time) {
    return time == 1 ? step : step + ", time " + time;
  }

  private static StepSpread of(String step, List<Round> rounds) {
    Map<Direction, Integer> directions = new EnumMap<>(Direction.class);
    List<Double> sizes = new ArrayList<>();
    List<Bracket> readings = new ArrayList<>();
    for (Round round : rounds) {
      if (round.shown() != null) {
        for (Prediction prediction : round.predictions().values()) {
          Direction way = prediction.direction();
          // Where nothing was read before there is no way, and the size alone counts.
          if (way != null && (round.opened().turn() || round.opened().before() != null)) {
            directions.merge(way, 1, Integer::sum);
          }
          if (!round.opened().turn() || prediction.size() > 0) {
            sizes.add(prediction.size());
          }
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
        step,
        rounds.get(0).opened().turn(),
        unit(rounds),
        locked,
        directions,
        sizes,
        spread == null ? List.of() : spread.readings());
  }

  private static String unit(List<Round> rounds) {
    for (Round round : rounds) {
      if (round.opened().turn()) {
        return "turn";
      }
      if (round.opened().blind()) {
        return "mm";
      }
      for (Value value : new Value[] {round.opened().before(), round.result()}) {
        if (value instanceof Value.Gap) {
          return "mm";
        } else if (value instanceof Value.Number number) {
          return number.unit();
        }
      }
    }
    return "";
  }
}
