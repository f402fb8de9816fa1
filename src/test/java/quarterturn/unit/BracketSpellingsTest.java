package quarterturn.unit;

import static com.google.common.truth.Truth.assertWithMessage;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Every spelling of a gauge reading against its bounds, and its print against itself. */
class BracketSpellingsTest {
  private static final double STEP = 0.05;

  /** Bounds closer than this print alike, and a leaf can't both pass and lift. */
  private static final double APART_MM = 0.002;

  private static final double HALF_A_PRINTED_DIGIT = 0.5e-3 + 1e-9;

  private final Random random = new Random(7810);
  private final Spelling spelling = new Spelling(random);

  /** A thickness as it is typed, and the bounds that it proves by passing and by lifting. */
  private record Leaf(String number, String unit, double passesMm, double liftsMm) {
    String text() {
      return number + unit;
    }
  }

  /** Two leaves, the thinner first, each with its unit. */
  private record Pair(Leaf thin, Leaf thick) {}

  @Test
  void twoLeavesWithTheirWords() {
    for (int i = 0; i < 4000; i++) {
      Pair pair = pair();
      String[] texts = texts(pair);
      String passes = texts[0] + spelling.oneOf("", " ") + passWord();
      String lifts = texts[1] + spelling.oneOf("", " ") + liftWord();
      String between = spelling.oneOf(" ", ", ", "; ", " ; ", "  ");
      String typed = random.nextBoolean() ? passes + between + lifts : lifts + between + passes;
      readAndReadBack(typed + spelling.oneOf("", " ", ","), pair);
    }
  }

  @Test
  void aRange() {
    for (int i = 0; i < 4000; i++) {
      Pair pair = pair();
      String[] texts = texts(pair);
      String to = spelling.oneOf("..", "to", "-", "–");
      readAndReadBack(
          texts[0] + spelling.oneOf("", " ") + to + spelling.oneOf("", " ") + texts[1], pair);
    }
  }

  @Test
  void oneNumberWithTheGaugesStepAroundIt() {
    for (int i = 0; i < 3000; i++) {
      Leaf leaf = leaf(unit());
      double mm = leaf.passesMm();
      Bracket read = BracketParser.parse(spelling.loosely(leaf.text()), STEP);
      same(
          leaf.text(),
          read,
          mm == 0 ? Double.NEGATIVE_INFINITY : Math.max(0, mm - STEP / 2),
          mm == 0 ? 0 : mm + STEP / 2,
          1e-9);
      if (mm > 0) {
        readBack(leaf.text(), read);
      }
    }
  }

  @Test
  void oneLeafAloneLeavesTheOtherBoundOpen() {
    for (int i = 0; i < 3000; i++) {
      Leaf leaf = random.nextInt(10) == 0 ? card() : leaf(unit());
      String passes = spelling.loosely(leaf.text() + spelling.oneOf("", " ") + passWord());
      String lifts = spelling.loosely(leaf.text() + spelling.oneOf("", " ") + liftWord());
      double open = Double.POSITIVE_INFINITY;
      same(passes, BracketParser.parse(passes, STEP), leaf.passesMm(), open, 1e-9);
      same(lifts, BracketParser.parse(lifts, STEP), -open, leaf.liftsMm(), 1e-9);
    }
  }

  private void readAndReadBack(String text, Pair pair) {
    String typed = spelling.loosely(text);
    Bracket read = BracketParser.parse(typed, STEP);
    same(typed, read, pair.thin().passesMm(), pair.thick().liftsMm(), 1e-9);
    readBack(typed, read);
  }

  private static void readBack(String typed, Bracket read) {
    Bracket again = BracketParser.parse(read.toString(), STEP);
    same(typed + ", printed " + read, again, read.lowMm(), read.highMm(), HALF_A_PRINTED_DIGIT);
  }

  private static void same(String typed, Bracket is, double low, double high, double within) {
    bound(typed, is.lowMm(), low, within);
    bound(typed, is.highMm(), high, within);
  }

  private static void bound(String typed, double is, double wanted, double within) {
    if (Double.isInfinite(wanted)) {
      assertWithMessage(typed).that(is).isEqualTo(wanted);
    } else {
      assertWithMessage(typed).that(is).isWithin(within).of(wanted);
    }
  }

  /** Both leaves with their units; where these are one, the unit may stand once. */
  private String[] texts(Pair pair) {
    Leaf thin = pair.thin();
    Leaf thick = pair.thick();
    if (!thin.unit().equals(thick.unit())) {
      return new String[] {thin.text(), thick.text()};
    }
    return switch (random.nextInt(3)) {
      case 0 -> new String[] {thin.number(), thick.text()};
      case 1 -> new String[] {thin.text(), thick.number()};
      default -> new String[] {thin.text(), thick.text()};
    };
  }

  private Pair pair() {
    while (true) {
      String unit = unit();
      Leaf thin = random.nextInt(10) == 0 ? card() : leaf(unit);
      Leaf thick = random.nextInt(10) == 0 ? card() : leaf(random.nextBoolean() ? unit : unit());
      boolean alike = thin.unit().equals(thick.unit());
      // A unit that stands once holds for both numbers, so no unit means millimetres only where
      // the other leaf has none either, or is a card.
      boolean clear = alike || isCard(thin) || isCard(thick) || named(thin) && named(thick);
      if (clear && thin.passesMm() + APART_MM < thick.liftsMm()) {
        return new Pair(thin, thick);
      }
    }
  }

  private static boolean isCard(Leaf leaf) {
    return leaf.number().equals("card");
  }

  private static boolean named(Leaf leaf) {
    return !leaf.unit().isEmpty();
  }

  /** ISO/IEC 7810, ID-1: 0.76 mm thick, plus or minus 0.08 mm. */
  private static Leaf card() {
    return new Leaf("card", "", 0.76 - 0.08, 0.76 + 0.08);
  }

  private String unit() {
    String unit = spelling.oneOf("", "mm", "in", "inch", "inches", "\"", "''", "″", "thou", "mil");
    return unit.isEmpty() ? "" : spelling.oneOf("", " ") + unit;
  }

  private Leaf leaf(String unit) {
    double factor =
        switch (unit.strip()) {
          case "", "mm" -> 1;
          case "thou", "mil" -> 0.0254;
          default -> 25.4;
        };
    if (factor == 25.4 && random.nextBoolean()) {
      int above = random.nextInt(8);
      int below = 8 << random.nextInt(4);
      String slash = spelling.oneOf("/", " / ");
      return leaf(above + slash + below, unit, factor * above / below);
    }
    BigDecimal number =
        factor == 1
            ? spelling.number(3, random.nextInt(4))
            : factor == 25.4 ? spelling.number(1, 3) : spelling.number(80, random.nextInt(2));
    return leaf(digits(number), unit, factor * number.doubleValue());
  }

  private static Leaf leaf(String number, String unit, double mm) {
    return new Leaf(number, unit, mm, mm);
  }

  /** A leaf has a digit after its point, and one before a comma, which also separates. */
  private String digits(BigDecimal number) {
    String digits = spelling.digits(number);
    return digits.matches(",.*|.*[.,]") ? number.toPlainString() : digits;
  }

  private String passWord() {
    return spelling.oneOf("passes", "pass", "p", "goes");
  }

  private String liftWord() {
    return spelling.oneOf("lifts", "lift", "l", "stops");
  }
}
