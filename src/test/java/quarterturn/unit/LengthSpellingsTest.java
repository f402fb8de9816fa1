package quarterturn.unit;

import static com.google.common.truth.Truth.assertWithMessage;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Every spelling of a length against its value, and its print against itself. Lengths stay below a
 * kilometre: six digits before the point are all that is taken.
 */
class LengthSpellingsTest {
  private static final double HALF_A_PRINTED_DIGIT = 0.5e-4 + 1e-9;

  /** The international yard and pound agreement of 1959: one inch is 25.4 mm exactly. */
  private static final Map<String, Double> MM =
      Map.ofEntries(
          Map.entry("", 1.0),
          Map.entry("mm", 1.0),
          Map.entry("cm", 10.0),
          Map.entry("m", 1000.0),
          Map.entry("in", 25.4),
          Map.entry("inch", 25.4),
          Map.entry("inches", 25.4),
          Map.entry("\"", 25.4),
          Map.entry("''", 25.4),
          Map.entry("″", 25.4),
          Map.entry("thou", 0.0254),
          Map.entry("mil", 0.0254));

  private static final List<String> UNITS = MM.keySet().stream().sorted().toList();

  private final Random random = new Random(254);
  private final Spelling spelling = new Spelling(random);

  @Test
  void aDecimalNumberInAnyUnit() {
    for (int i = 0; i < 6000; i++) {
      BigDecimal number = spelling.number(900, random.nextInt(5));
      readAndReadBack(spelling.digits(number), number.doubleValue());
    }
  }

  @Test
  void aFractionInAnyUnit() {
    for (int i = 0; i < 3000; i++) {
      int above = random.nextInt(900);
      int below = 1 + random.nextInt(9999);
      String slash = spelling.oneOf("/", " / ", " /", "/ ");
      readAndReadBack(above + slash + below, (double) above / below);
    }
  }

  private void readAndReadBack(String number, double value) {
    String unit = UNITS.get(random.nextInt(UNITS.size()));
    String sign = spelling.oneOf("", "+", "-");
    String typed = spelling.loosely(sign + number + spelling.oneOf("", " ", "  ") + unit);
    double mm = (sign.equals("-") ? -1 : 1) * value * MM.getOrDefault(unit, Double.NaN);
    Length read = Length.parse(typed);
    assertWithMessage(typed).that(read.mm()).isWithin(1e-9 * Math.max(1, Math.abs(mm))).of(mm);
    Length again = Length.parse(read.toString());
    assertWithMessage(typed).that(again.mm()).isWithin(HALF_A_PRINTED_DIGIT).of(read.mm());
    assertWithMessage(typed).that(again.toString()).isEqualTo(read.toString());
  }
}
