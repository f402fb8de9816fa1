package quarterturn.unit;

import static com.google.common.truth.Truth.assertWithMessage;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Every spelling of a turn against its value, and its print against itself. Turns stay below a
 * hundred: a mixed number takes two digits before its fraction.
 */
class TurnSpellingsTest {
  private static final double HALF_A_PRINTED_DIGIT = 0.5e-4 + 1e-9;

  private final Random random = new Random(32);
  private final Spelling spelling = new Spelling(random);

  @Test
  void aDecimalNumberOfTurns() {
    for (int i = 0; i < 4000; i++) {
      BigDecimal number = spelling.number(100, random.nextInt(6));
      String unit = spelling.oneOf("", "turn", "turns");
      readAndReadBack(spelling.digits(number), unit, number.doubleValue());
    }
  }

  @Test
  void degrees() {
    for (int i = 0; i < 4000; i++) {
      BigDecimal number = spelling.number(1000, random.nextInt(4));
      String unit = spelling.oneOf("deg", "degrees", "°");
      readAndReadBack(spelling.digits(number), unit, number.doubleValue() / 360);
    }
  }

  @Test
  void fractionsWithAndWithoutWholeTurns() {
    for (int i = 0; i < 4000; i++) {
      int below = random.nextBoolean() ? 1 << random.nextInt(6) : 1 + random.nextInt(999);
      int above = random.nextInt(below + 1);
      int whole = random.nextInt(99);
      String part = above + spelling.oneOf("/", " / ", " /", "/ ") + below;
      String unit = spelling.oneOf("", "turn", "turns");
      double fraction = (double) above / below;
      if (random.nextBoolean()) {
        readAndReadBack(part, unit, fraction);
      } else {
        readAndReadBack(whole + spelling.oneOf(" ", "  ") + part, unit, whole + fraction);
      }
    }
  }

  /** The print says how far, not which way; of less than its last digit it says "no turn". */
  private void readAndReadBack(String number, String unit, double value) {
    String sign = spelling.oneOf("", "+", "-");
    String typed = spelling.loosely(sign + number + spelling.oneOf("", " ", "  ") + unit);
    Turn read = Turn.parse(typed);
    double turns = sign.equals("-") ? -value : value;
    assertWithMessage(typed).that(read.turns()).isWithin(1e-12).of(turns);
    String print = read.toString();
    if (print.equals("no turn")) {
      assertWithMessage(typed).that(value).isLessThan(HALF_A_PRINTED_DIGIT);
      return;
    }
    Turn again = Turn.parse(print);
    assertWithMessage(typed).that(again.turns()).isWithin(HALF_A_PRINTED_DIGIT).of(value);
    // "0.375 turn" reads back as 3/8, which is then printed so: the same turn in other words.
    assertWithMessage(typed)
        .that(Turn.parse(again.toString()).turns())
        .isWithin(1e-12)
        .of(again.turns());
  }
}
