package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BracketParserTest {
  private static final double STEP = 0.05;
  private static final double NO_GAP = Double.NEGATIVE_INFINITY;
  private static final double OVER = Double.POSITIVE_INFINITY;

  private static void read(String typed, double low, double high) {
    Bracket bracket = BracketParser.parse(typed, STEP);
    same(bracket.lowMm(), low);
    same(bracket.highMm(), high);
  }

  private static void same(double is, double wanted) {
    if (Double.isInfinite(wanted)) {
      assertThat(is).isEqualTo(wanted);
    } else {
      assertThat(is).isWithin(1e-9).of(wanted);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0.30 passes 0.35 lifts|0.30|0.35",
        "0.30 passes, 0.35 lifts|0.30|0.35",
        "0.30 passes, 0.35 lifts.|0.30|0.35",
        "0.30..0.35 mm.|0.30|0.35",
        "0.35 lifts; 0.30 passes|0.30|0.35",
        "0.30 p 0.35 l|0.30|0.35",
        "0.30p 0.35l|0.30|0.35",
        "0,30 Pass 0,35 Lift|0.30|0.35",
        "0,30 passes ,35 lifts|0.30|0.35",
        "0,30 passes,35 mm lifts|0.30|0.35",
        "0.30 passes,0.35 lifts|0.30|0.35",
        "0.30 goes 0.35 stops|0.30|0.35",
        "0.30..0.35|0.30|0.35",
        "0.30 .. 0.35|0.30|0.35",
        "0.30-0.35|0.30|0.35",
        "0.30 – 0.35|0.30|0.35",
        "0.30 to 0.35|0.30|0.35",
        "0.30 mm to 0.35 mm|0.30|0.35",
        ".3...35|0.30|0.35",
        "1..2|1|2",
        "0..0.05|0|0.05",
        ".012 in passes .014 in lifts|0.3048|0.3556",
        ".012\" passes .014\" lifts|0.3048|0.3556",
        "12 thou passes 14 lifts|0.3048|0.3556",
        "12 passes 14 thou lifts|0.3048|0.3556",
        "12..14 thou|0.3048|0.3556",
        "12 thou to 14|0.3048|0.3556",
        "12-14 thou|0.3048|0.3556",
        "1/64..1/32 in|0.396875|0.79375",
        "0.30 mm..14 thou|0.30|0.3556",
      })
  void twoBoundsAreRead(String typed, double low, double high) {
    read(typed, low, high);
  }

  @Test
  void eitherHalfAloneIsOpen() {
    read("0.30 passes", 0.30, OVER);
    read("1.0 p", 1.0, OVER);
    read("0.05 lifts", NO_GAP, 0.05);
    read(".002 in l", NO_GAP, 0.0508);
    read("0 lifts", NO_GAP, 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"touches", "touch", "touching", "T", " rests ", "no gap", "none", "0", "0.00 mm"})
  void noGapAtAll(String typed) {
    assertThat(BracketParser.parse(typed, STEP)).isEqualTo(Bracket.touches());
  }

  @Test
  void oneNumberHasTheGaugesStepAroundIt() {
    read("0.30", 0.275, 0.325);
    read("0.30 mm", 0.275, 0.325);
    read("12 thou", 0.2798, 0.3298);
    read("1/64 in", 0.371875, 0.421875);
  }

  /** A gap is not negative, but a small number is no surer upwards than any other. */
  @Test
  void aSmallNumberIsCutAtNoGapAndNotAbove() {
    read("0.01", 0, 0.035);
  }

  /** ISO/IEC 7810, ID-1: 0.76 mm thick, plus or minus 0.08 mm. */
  @Test
  void aBankCardIsAsThickAsItsStandardAllows() {
    same(BracketParser.CARD.lowMm(), 0.76 - 0.08);
    same(BracketParser.CARD.highMm(), 0.76 + 0.08);
    read("card", 0.68, 0.84);
    read("card passes", 0.68, OVER);
    read("card lifts", NO_GAP, 0.84);
    read("card passes 1.0 lifts", 0.68, 1.0);
    read("0.50 passes card lifts", 0.50, 0.84);
    read("0.50..card", 0.50, 0.84);
    read("card to 1.0 mm", 0.68, 1.0);
    read("20 thou to card", 0.508, 0.84);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "0.30 0.35",
        "passes",
        "0.30 passes 0.35",
        "0.30 passes 0.35 passes",
        "0.3 lifts 0.2 lifts",
        "0.30 sings",
        "1/8",
        "a lot",
        "0.30..",
        "..0.35",
        "0.30...",
        "cards",
        "0.30 passes 0.35 lifts 0.40",
        "\u001b[2J"
      })
  void whatIsNoReadingIsRefusedWithExamples(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> BracketParser.parse(typed, STEP));
    assertThat(e).hasMessageThat().contains("0.30 passes 0.35 lifts, or 0.30..0.35, or 0.30, or");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void aLongLineIsRefusedAtOnceAndCutInTheMessage() {
    String typed = "1".repeat(1_000_000);
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> BracketParser.parse(typed, STEP));
    assertThat(String.valueOf(e.getMessage()).length()).isLessThan(300);
  }

  @Test
  void aHundredCharactersAreReadAndOneMoreIsNot() {
    String full = "0.30" + " ".repeat(90) + "passes";
    read(full, 0.30, OVER);
    String over = full.replace(" passes", "  passes");
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> BracketParser.parse(over, STEP));
    assertThat(e).hasMessageThat().contains("...\" is not a reading");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.35 passes 0.30 lifts", "0.35..0.30", "0.30..0.30", "14-12 thou"})
  void leavesThatCrossAreRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> BracketParser.parse(typed, STEP));
    assertThat(e).hasMessageThat().contains("passes must be thinner than the one that pushes");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.3", "-0.3 passes", "-1 lifts", "-0.3..0.3", "0.30--0.35"})
  void aGapIsNotNegative(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> BracketParser.parse(typed, STEP));
    assertThat(e)
        .hasMessageThat()
        .contains("cannot be negative; if the string rests, type touches");
  }

  @Test
  void aDivisionByZeroIsNoReading() {
    assertThrows(NotUnderstoodException.class, () -> BracketParser.parse("1/0 in", STEP));
    assertThrows(NotUnderstoodException.class, () -> BracketParser.parse("1/0..2 in", STEP));
  }

  @Test
  void whatIsPrintedIsReadBack() {
    Random random = new Random(30);
    for (int i = 0; i < 2000; i++) {
      int low = random.nextInt(200);
      Bracket bracket = new Bracket(low / 100.0, (low + 1 + random.nextInt(50)) / 100.0);
      read(bracket.toString(), bracket.lowMm(), bracket.highMm());
    }
  }
}
