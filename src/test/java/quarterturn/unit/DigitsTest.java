package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Digits other than 0 to 9 are refused alike by everything that reads a number. */
class DigitsTest {
  /** A reader of each quantity, and a text that it takes. */
  private static final Map<String, Function<String, ?>> READERS =
      Map.of(
          "0.3 mm", Length::parse,
          "1/8 turn", Turn::parse,
          "E1", Note::parse,
          "45 %", Humidity::parse,
          "21 C", Temperature::parse,
          "41.2 Hz", Frequency::parse,
          "+6 cents", Cents::parse,
          "180 N", Force::parse,
          "23.5 g/m", UnitWeight::parse,
          "0.30 passes 0.35 lifts", typed -> BracketParser.parse(typed, 0.05));

  /** Zero in Arabic-Indic, Devanagari, Thai, fullwidth and mathematical digits (Unicode Nd). */
  private static final List<Integer> ZEROS = List.of(0x0660, 0x0966, 0x0E50, 0xFF10, 0x1D7CE);

  private static String written(String text, int zero) {
    StringBuilder out = new StringBuilder();
    text.chars().map(c -> c >= '0' && c <= '9' ? zero + c - '0' : c).forEach(out::appendCodePoint);
    return out.toString();
  }

  @Test
  void everyQuantityRefusesTheDigitsOfOtherScriptsInTheSameWords() {
    READERS.forEach(
        (text, reader) -> {
          assertThat(reader.apply(text)).isNotNull();
          for (int zero : ZEROS) {
            refused(reader, written(text, zero));
          }
        });
  }

  private static void refused(Function<String, ?> reader, String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> reader.apply(typed), typed);
    assertWithMessage(typed)
        .that(e)
        .hasMessageThat()
        .isEqualTo("\"" + typed + "\" has digits of another script; type 0 to 9");
  }

  @Test
  void numbersWithoutAUnitAreReadAndRefused() {
    assertThat(Digits.whole(" 12 ", 9)).isEqualTo(12);
    assertThat(Digits.whole("-3", 9)).isEqualTo(-3);
    assertThat(Digits.number("0,5")).isEqualTo(0.5);
    for (int zero : ZEROS) {
      refused(text -> Digits.whole(text, 9), written("12", zero));
      refused(Digits::number, written("0.5", zero));
    }
    for (String typed : List.of("", "ten", "1.5", "12345678901", "0x10", "1e3", "NaN")) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> Digits.whole(typed, 9)))
          .hasMessageThat()
          .endsWith("\" is not a whole number; type for example 12");
    }
    for (String typed : List.of("", "half", "NaN", "Infinity", "1e3", "5 mm")) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> Digits.number(typed)))
          .hasMessageThat()
          .endsWith("\" is not a number; type for example 0.5");
    }
  }
}
