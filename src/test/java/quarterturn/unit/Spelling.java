package quarterturn.unit;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;

/** Spells numbers the many ways people type them; every choice comes from the random given. */
record Spelling(Random random) {
  String oneOf(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** A number with {@code decimals} digits after the point, from zero to below {@code end}. */
  BigDecimal number(int end, int decimals) {
    return BigDecimal.valueOf(random.nextInt(end * (int) Math.pow(10, decimals)), decimals);
  }

  /** Point or comma, and perhaps without the zero before it or with nothing after it. */
  String digits(BigDecimal number) {
    String plain = number.toPlainString();
    if (!plain.contains(".")) {
      return oneOf(plain, plain + ".", plain + ",", "0" + plain);
    }
    String pointed = plain.startsWith("0.") ? oneOf(plain, plain.substring(1)) : plain;
    return oneOf(pointed, pointed.replace('.', ','));
  }

  /** {@code text} in capitals or not, perhaps with space around it. */
  String loosely(String text) {
    String cased = oneOf(text, text.toUpperCase(Locale.ROOT));
    return oneOf("", " ", "\t") + cased + oneOf("", " ", "  ");
  }
}
