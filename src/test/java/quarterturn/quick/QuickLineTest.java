package quarterturn.quick;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.unit.Bracket;

/** Lines with several readings. The readings are invented. */
class QuickLineTest {
  private static final Terms BASS =
      new Terms(
          List.of("E1", "A1", "D2", "G2"),
          Map.of(
              "key-fit",
              List.of("fits", "rocks"),
              "inspect",
              List.of("sound", "damage"),
              "gauges",
              List.of()),
          0.05);

  /** What each part comes to: "relief 0 0.395..0.445", "inspect=sound". */
  private static String read(String line, Terms terms) throws Mistyped {
    return String.join(
        "; ", QuickLine.read(new Tokens(line), terms).stream().map(QuickLineTest::words).toList());
  }

  private static String words(Given given) {
    if (given instanceof Given.Reading reading) {
      return reading.quantity().word() + " " + reading.string() + " " + words(reading.answer());
    }
    if (given instanceof Given.Words words) {
      return words.step() + "=" + words.words();
    }
    Given.Choice choice = (Given.Choice) given;
    return choice.step() + "=" + choice.option();
  }

  private static String words(Answer answer) {
    if (answer instanceof Answer.Measured measured) {
      Bracket bracket = measured.bracket();
      return bracket.noGap()
          ? "touches"
          : String.format(java.util.Locale.ROOT, "%.3f..%.3f", bracket.lowMm(), bracket.highMm());
    }
    return answer instanceof Answer.Value value
        ? String.format(java.util.Locale.ROOT, "%.2f", value.value())
        : "cannot";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "relief .42 low .38 high|relief 0 0.395..0.445; relief 3 0.355..0.405",
        "relief .42 low .38 high; a12 2.4 2.2 2.0 1.9|relief 0 0.395..0.445; relief 3 0.355..0.405;"
            + " action 0 2.40; action 1 2.20; action 2 2.00; action 3 1.90",
        "r .40..0.45 low|relief 0 0.400..0.450",
        "r .40 passes .45 lifts low .35 passes .40 lifts high|relief 0 0.400..0.450;"
            + " relief 3 0.350..0.400",
        "relief touches low|relief 0 touches",
        "relief cannot low|relief 0 cannot",
        "relief .42 .43 low|relief 0 0.395..0.445; relief 0 0.405..0.455",
        "relief 12 to 14 thou low|relief 0 0.305..0.356",
        "relief .012 in passes .014 in lifts low|relief 0 0.305..0.356",
        "RELIEF .42 LOW|relief 0 0.395..0.445",
        "a12 2.4 E1 1.9 G2|action 0 2.40; action 3 1.90",
        "a12 2.4 s1 2.2 s2|action 0 2.40; action 1 2.20",
        "a12 5/64 in low|action 0 1.98",
        "i12 +2 0 -1 3|intonation 0 2.00; intonation 1 0.00; intonation 2 -1.00; intonation 3 3.00",
        "n1 .2 .2 .15 .15|nut-clearance 0 0.175..0.225; nut-clearance 1 0.175..0.225;"
            + " nut-clearance 2 0.125..0.175; nut-clearance 3 0.125..0.175",
        "gap 2.5 low 2 high|pickup-gap 0 2.50; pickup-gap 3 2.00",
        "rh 48 %; air 21 C|humidity -1 48.00; temperature -1 21.00",
        "gauges .105 .085 .065 .045; rh 48|gauges=.105 .085 .065 .045; humidity -1 48.00",
        "rh 48; inspect sound; key-fit fits;|humidity -1 48.00; inspect=sound; key-fit=fits"
      })
  void readsEveryPart(String line, String means) throws Mistyped {
    assertThat(read(line, BASS)).isEqualTo(means);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "relief|6|A reading of relief is missing here",
        "relief ; rh 48|7|A reading of relief is missing here",
        "relief low|7|\"low\" is no reading of relief",
        "relief .42 lwo|11|\"lwo\" is no reading of relief",
        "relief .42 low .38|18|The string of the last reading is missing here",
        "relief .4.2 low|7|\".4.2\" is not a reading",
        "relief .45..0.40 low|7|The gauge that passes must be thinner",
        "a12 2.4 2.2 2.0 1.9 1.8|20|More readings than the instrument has strings, which are 4",
        "a12 2.4 2.2; ; rh 48|13|The name of a reading is missing here",
        "a12 2.4 rh 48|8|\"rh\" is no reading of action",
        "rh 48 50|6|A second reading of humidity",
        "rh 480|3|",
        "key-fit|7|An answer to key-fit is missing here",
        "key-fit loose|8|\"loose\" is no answer to key-fit",
        "gauges|6|The words for gauges are missing here",
        "gauges ; rh 48|7|The words for gauges are missing here",
        "key-fit fits rh 48|13|\"rh\" cannot stand here",
        "relif .42 low|0|\"relif\" is no reading and no question of this job"
      })
  void pointsAtTheWordThatIsAtFault(String line, int at, String wrong) {
    Mistyped e = assertThrows(Mistyped.class, () -> QuickLine.read(new Tokens(line), BASS));
    assertThat(e.at()).isEqualTo(at);
    assertThat(e.getMessage()).contains(wrong == null ? "" : wrong);
    List<String> shown = e.lines(line);
    assertThat(shown.get(0)).isEqualTo(line);
    assertThat(shown.get(1)).isEqualTo(" ".repeat(at) + "^");
    assertThat(shown.get(2)).endsWith(".");
  }

  @Test
  void aLineOfAnotherSortNamesNothing() {
    for (String line : List.of("", ".42", "understood", "back", "key-fit", "1/8 smooth", ";")) {
      assertThat(QuickLine.names(new Tokens(line), BASS)).isFalse();
    }
    assertThat(QuickLine.names(new Tokens("relief"), BASS)).isTrue();
    assertThat(QuickLine.names(new Tokens(" R .42"), BASS)).isTrue();
    assertThat(QuickLine.names(new Tokens("key-fit fits"), BASS)).isTrue();
  }

  @Test
  void everyQuantityHasAName() {
    for (Quantity quantity : Quantity.values()) {
      assertThat(Name.of(quantity.word())).isEqualTo(quantity);
    }
    assertThat(Name.words()).containsNoDuplicates();
  }
}
