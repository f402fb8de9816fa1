package quarterturn.quick;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
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
          0.05,
          null,
          Map.of(Quantity.ACTION, new Bench.Plausible(0.5, 10)));

  /** What each part comes to: "relief 0 0.395..0.445", "inspect=sound". */
  private static String read(String line, Terms terms) {
    return String.join(
        "; ", QuickLine.parts(line, terms).stream().map(QuickLineTest::words).toList());
  }

  private static String words(Part part) {
    if (part instanceof Part.Named named) {
      return String.join("; ", named.given().stream().map(QuickLineTest::words).toList());
    }
    if (part instanceof Part.Bare bare) {
      return "-> " + bare.text();
    }
    return part instanceof Part.Drop drop
        ? "drop " + drop.name() + " " + drop.string()
        : "wrong at " + ((Part.Wrong) part).why().at();
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
        "rh 48; inspect sound; key-fit fits;|humidity -1 48.00; inspect=sound; key-fit=fits",
        "r .40-.45 .35-.40|relief 0 0.400..0.450; relief 3 0.350..0.400",
        "a12 2.4 1.9|action 0 2.40; action 3 1.90",
        "a12 2.4 2.2 2|action 0 2.40; action 1 2.20; action 2 2.00",
        "sound; rh 48; .40-.45 ;even|-> sound; humidity -1 48.00; -> .40-.45; -> even",
        "a12 2.4 2.2; ; rh 48|action 0 2.40; action 3 2.20; humidity -1 48.00",
        "rh 48; relief low; sound|humidity -1 48.00; wrong at 14; -> sound",
        "relif .42 low|-> relif .42 low",
        "drop relief; drop r high; drop inspect|drop relief null; drop relief G2; drop inspect null"
      })
  void readsEveryPart(String line, String means) {
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
        "a12 2.4 rh 48|8|\"rh\" is no reading of action",
        "rh 48 50|6|A second reading of humidity",
        "rh 480|3|",
        "key-fit loose|8|\"loose\" is no answer to key-fit",
        "gauges ; rh 48|7|The words for gauges are missing here",
        "key-fit fits rh 48|13|\"rh\" cannot stand here",
        "a12 2.4 24|8|24 mm is not plausible for action",
        "drop|4|What is to be dropped is named here",
        "drop sound|5|What is to be dropped is named here"
      })
  void pointsAtTheWordThatIsAtFault(String line, int at, String wrong) {
    Mistyped e = ((Part.Wrong) QuickLine.parts(line, BASS).get(0)).why();
    assertThat(e.at()).isEqualTo(at);
    assertThat(e.getMessage()).contains(wrong == null ? "" : wrong);
    List<String> shown = e.lines(line);
    assertThat(shown.get(0)).isEqualTo(line);
    assertThat(shown.get(1)).isEqualTo(" ".repeat(at) + "^");
    assertThat(shown.get(2)).endsWith(".");
  }

  @Test
  void aLineOfAnotherSortNamesNothing() {
    for (String line : List.of(".42", "understood", "back", "key-fit", "1/8 smooth")) {
      assertThat(read(line, BASS)).isEqualTo("-> " + line);
    }
    assertThat(read(" ; ;", BASS)).isEmpty();
  }

  /** Where a reading is on view, readings without a string's word begin with its string. */
  @Test
  void theFirstOfSeveralReadingsIsOnTheStringThatIsAskedFor() {
    Terms each = asking(Which.EACH, "A1");
    assertThat(read("a12 2.4 2.2", each)).isEqualTo("action 1 2.40; action 2 2.20");
    assertThat(read("a12 2.4 2.2 2 1.9", each))
        .isEqualTo("action 0 2.40; action 1 2.20; action 2 2.00; action 3 1.90");
    assertThat(read("a12 2.4 2.2", asking(Which.LOWEST, "E1")))
        .isEqualTo("action 0 2.40; action 3 2.20");
    assertThat(read("a12 2.4", asking(Which.HIGHEST, "G2"))).isEqualTo("action 3 2.40");
    assertThat(read("a12 2.4 2.2", asking(Which.HIGHEST, "G2"))).isEqualTo("wrong at 8");
  }

  private static Terms asking(Which which, String string) {
    Prompt.Measure asked =
        new Prompt.Measure(
            new PromptText("p", "read", "", "", null, List.of(), null, List.of()),
            Quantity.ACTION,
            List.of(),
            12,
            which,
            string,
            0.1);
    return new Terms(BASS.strings(), BASS.choices(), 0.05, asked, BASS.plausible());
  }

  @Test
  void everyQuantityHasAName() {
    for (Quantity quantity : Quantity.values()) {
      assertThat(Name.of(quantity.word())).isEqualTo(quantity);
    }
    assertThat(Name.words()).containsNoDuplicates();
  }
}
