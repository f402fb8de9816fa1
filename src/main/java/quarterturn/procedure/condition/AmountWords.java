package quarterturn.procedure.condition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Writes amounts as a file does: {@link Amounts} reads the very same number back. */
final class AmountWords {
  /** Most decimals written: as many as any amount is read with. */
  private static final int MOST_DECIMALS = 9;

  private static final double THOU = 0.0254;
  private static final double INCH = 25.4;

  /** How near a fraction must lie to be tried. */
  private static final double NEAR = 1e-9;

  private AmountWords() {}

  /**
   * An amount as a file writes it: "0.1 mm", "10 thou" where no millimetres give the same number,
   * "40 %".
   */
  static String of(Quantity quantity, double amount) {
    Stream<String> written =
        quantity.unit().equals("mm") ? length(amount) : decimals(amount, quantity.unit());
    String nearest = BigDecimal.valueOf(amount).toPlainString() + " " + quantity.unit();
    return first(written, amount, text -> Amounts.of(quantity, text), nearest);
  }

  /** A turn as a file writes it: "1/8 turn". */
  static String of(Turn turn) {
    double turns = turn.turns();
    int whole = (int) turns;
    Stream<String> written =
        Stream.of(
                Stream.of(turn.toString()),
                decimals(turns, "turn"),
                fractions(turns, 999, "turn"),
                fractions(turns - whole, 999, "turns").map(part -> whole + " " + part),
                decimals(turn.degrees(), "deg"))
            .flatMap(all -> all);
    return first(written, turns, text -> Amounts.turn(text).turns(), turn.toString());
  }

  private static Stream<String> length(double mm) {
    List<String> units = List.of("mm", "thou", "in");
    List<DoubleUnaryOperator> in = List.of(a -> a, a -> a / THOU, a -> a / INCH);
    IntStream each = IntStream.range(0, units.size());
    Stream<String> decimals =
        each.boxed().flatMap(i -> decimals(in.get(i).applyAsDouble(mm), units.get(i)));
    Stream<String> fractions =
        Stream.of(2, 0, 1).flatMap(i -> fractions(in.get(i).applyAsDouble(mm), 9999, units.get(i)));
    return Stream.concat(decimals, fractions);
  }

  private static Stream<String> decimals(double number, String unit) {
    return IntStream.rangeClosed(0, MOST_DECIMALS)
        .mapToObj(
            digits ->
                BigDecimal.valueOf(number).setScale(digits, RoundingMode.HALF_UP).toPlainString()
                    + " "
                    + unit);
  }

  private static Stream<String> fractions(double number, int most, String unit) {
    return IntStream.rangeClosed(1, most)
        .filter(below -> Math.abs(number * below - Math.rint(number * below)) < NEAR * below)
        .filter(below -> Math.rint(number * below) <= most)
        .mapToObj(below -> (int) Math.rint(number * below) + "/" + below + " " + unit);
  }

  /** The first of some spellings that is read as {@code amount}. */
  private static String first(
      Stream<String> written, double amount, ToDoubleFunction<String> read, String otherwise) {
    return written
        .filter(
            text -> {
              try {
                return Double.compare(read.applyAsDouble(text), amount) == 0;
              } catch (NotUnderstoodException e) {
                return false;
              }
            })
        .findFirst()
        .orElse(otherwise);
  }
}
