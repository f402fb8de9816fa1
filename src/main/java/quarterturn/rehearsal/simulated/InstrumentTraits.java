package quarterturn.rehearsal.simulated;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;

/**
 * The properties of a simulated instrument as found. Lists hold a value for each string, the lowest
 * first.
 *
 * @param neck its neck
 * @param action height of each string at fret 12 in millimetres, at the relief as found
 * @param wanted the height of each string at fret 12 to which a bridge on posts is set
 * @param intonation error of each string at fret 12 in cents
 * @param nutClearance gap of each string over fret 1 in millimetres
 * @param pickupGap distance of each string from the pickup in millimetres; empty where there is no
 *     pickup
 * @param newSet relief in millimetres that a set of other strings adds
 * @param wishes choices answered by their last option the first time they come up
 */
public record InstrumentTraits(
    NeckTraits neck,
    List<Double> action,
    List<Double> wanted,
    List<Double> intonation,
    List<Double> nutClearance,
    List<Double> pickupGap,
    double newSet,
    Set<Recorded> wishes) {
  public InstrumentTraits {
    action = List.copyOf(action);
    wanted = List.copyOf(wanted);
    intonation = List.copyOf(intonation);
    nutClearance = List.copyOf(nutClearance);
    pickupGap = List.copyOf(pickupGap);
    wishes = Set.copyOf(wishes);
  }

  /** An instrument with this neck and everything else in the middle of its window. */
  public static InstrumentTraits of(Kind kind, Style style, NeckTraits neck) {
    return new InstrumentTraits(
        neck,
        middles(kind, style, Quantity.ACTION, i -> 0),
        middles(kind, style, Quantity.ACTION, i -> 0),
        middles(kind, style, Quantity.INTONATION, i -> 0),
        middles(kind, style, Quantity.NUT_CLEARANCE, i -> 0),
        middles(kind, style, Quantity.PICKUP_GAP, i -> 0),
        0,
        Set.of());
  }

  /**
   * An invented instrument that needs a whole set-up: the neck as given, the action 0.9 mm too high
   * on the lowest string and less toward the highest, the highest string but one sharp by 9 cents,
   * and another set of strings wanted, which adds 0.1 mm of relief.
   */
  public static InstrumentTraits neglected(Kind kind, Style style, NeckTraits neck) {
    int last = kind.strings().size() - 1;
    return new InstrumentTraits(
        neck,
        middles(kind, style, Quantity.ACTION, i -> 0.9 - 0.5 * i / Math.max(1, last)),
        middles(kind, style, Quantity.ACTION, i -> 0),
        middles(kind, style, Quantity.INTONATION, i -> i == last ? 9 : i == 0 ? -4 : 1),
        middles(kind, style, Quantity.NUT_CLEARANCE, i -> 0),
        middles(kind, style, Quantity.PICKUP_GAP, i -> i == 0 ? -1.2 : 0),
        0.1,
        Set.of(Recorded.STRINGS, Recorded.NEXT_DAY));
  }

  /**
   * The middle of each string's window plus an offset; zeros, or an empty list for a pickup, where
   * the kind has no window.
   */
  private static List<Double> middles(
      Kind kind, Style style, Quantity quantity, IntToDoubleFunction off) {
    if (!kind.windows().containsKey(quantity)) {
      Double[] none = new Double[kind.strings().size()];
      Arrays.fill(none, 0.0);
      return quantity == Quantity.PICKUP_GAP ? List.of() : List.of(none);
    }
    return IntStream.range(0, kind.strings().size())
        .mapToObj(i -> kind.target(quantity, style, i).window().middleMm() + off.applyAsDouble(i))
        .toList();
  }
}
