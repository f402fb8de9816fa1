package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every spelling of a humidity against its value, and its print against itself. */
class HumiditySpellingsTest {
  private static final double HALF_A_PERCENT = 0.5 + 1e-9;

  private final Random random = new Random(48);
  private final Spelling spelling = new Spelling(random);

  @Test
  void aNumberWithAnyOfItsUnits() {
    for (int i = 0; i < 4000; i++) {
      BigDecimal number = random.nextInt(50) == 0 ? new BigDecimal(100) : percent();
      boolean share = number.signum() > 0 && number.compareTo(BigDecimal.ONE) < 0;
      String unit = spelling.oneOf(share ? "%" : "", "%", "rh", "%rh", "% rh", "%  rh");
      readAndReadBack(
          spelling.loosely(digits(number) + spelling.oneOf("", " ", "  ") + unit),
          number.doubleValue());
    }
  }

  private BigDecimal percent() {
    return spelling.number(100, random.nextInt(5));
  }

  /** A humidity has three digits at most before its point. */
  private String digits(BigDecimal number) {
    String digits = spelling.digits(number);
    return digits.equals("0100") ? number.toPlainString() : digits;
  }

  @ParameterizedTest
  @CsvSource({"0.45, 0.45, 45", ".45, .45, 45", "'0,5', '0,5', 50", "0.004, 0.004, 0.4"})
  void aShareIsRefusedWithBothItsReadings(String typed, String asPercent, String asShare) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Humidity.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo(
            "%s can be read as %s %% or as %s %%; type %s %%, or %s %% if the air is as dry as that"
                .formatted(asPercent, asShare, asPercent, asShare, asPercent));
    assertThat(Humidity.parse(asShare + " %").percent())
        .isWithin(1e-9)
        .of(100 * Humidity.parse(asPercent + " %").percent());
  }

  private static void readAndReadBack(String typed, double percent) {
    Humidity read = Humidity.parse(typed);
    assertWithMessage(typed).that(read.percent()).isWithin(1e-12).of(percent);
    Humidity again = Humidity.parse(read.toString());
    assertWithMessage(typed).that(again.percent()).isWithin(HALF_A_PERCENT).of(percent);
    assertWithMessage(typed).that(again.toString()).isEqualTo(read.toString());
  }
}
