package quarterturn.unit;

import static com.google.common.truth.Truth.assertWithMessage;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Every spelling of a humidity against its value, and its print against itself. */
class HumiditySpellingsTest {
  private static final double HALF_A_PERCENT = 0.5 + 1e-9;

  private final Random random = new Random(48);
  private final Spelling spelling = new Spelling(random);

  @Test
  void aNumberWithAnyOfItsUnits() {
    for (int i = 0; i < 4000; i++) {
      BigDecimal number = random.nextInt(50) == 0 ? new BigDecimal(100) : percent();
      String unit = spelling.oneOf("", "%", "rh", "%rh", "% rh", "%  rh");
      readAndReadBack(
          spelling.loosely(digits(number) + spelling.oneOf("", " ", "  ") + unit),
          number.doubleValue());
    }
  }

  private BigDecimal percent() {
    return spelling.number(100, random.nextInt(5));
  }

  /** A humidity has a digit before its point, and three at most. */
  private String digits(BigDecimal number) {
    String digits = spelling.digits(number);
    return digits.startsWith(".") || digits.startsWith(",") || digits.equals("0100")
        ? number.toPlainString()
        : digits;
  }

  private static void readAndReadBack(String typed, double percent) {
    Humidity read = Humidity.parse(typed);
    assertWithMessage(typed).that(read.percent()).isWithin(1e-12).of(percent);
    Humidity again = Humidity.parse(read.toString());
    assertWithMessage(typed).that(again.percent()).isWithin(HALF_A_PERCENT).of(percent);
    assertWithMessage(typed).that(again.toString()).isEqualTo(read.toString());
  }
}
