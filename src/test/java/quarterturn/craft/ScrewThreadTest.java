package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

class ScrewThreadTest {
  @Test
  @HoldsTo("thread.travel")
  void screwsMoveAsTheReferenceSays() {
    try (Reference travel = Reference.of("thread.travel")) {
      Turn turn = new Turn(travel.inputs().number("turn"));
      assertThat(turn).isEqualTo(Turn.QUARTER);
      for (String name : travel.expected().keys()) {
        Value row = travel.expected().at(name);
        ScrewThread thread = ScrewThread.parse(name);
        // 25.4/28 is printed to eight digits.
        double tolerance = travel.tolerance("rel") + 4e-9;
        String because = name + ", " + travel.because();
        assertThat(thread.name()).isEqualTo(name);
        assertWithMessage(because)
            .that(thread.pitch().mm())
            .isWithin(tolerance)
            .of(row.number("pitch_mm"));
        assertWithMessage(because)
            .that(thread.travel(turn).mm())
            .isWithin(tolerance)
            .of(row.number("quarter_turn_mm"));
        assertWithMessage(because)
            .that(thread.travel(Turn.EIGHTH).mm())
            .isWithin(tolerance)
            .of(row.number("eighth_turn_mm"));
        // The other way round: the change of action that asks for just this turn.
        Length effect = Length.mm(row.number("saddle_quarter_turn_effect_at_fret12_mm"));
        assertWithMessage(because)
            .that(SaddleHeight.turns(SaddleHeight.change(effect, 12), thread).turns())
            .isWithin(1e-7)
            .of(turn.turns());
      }
    }
  }

  /** Coarse pitches, ISO 261; M1.6 to M2.5 from memory. Unified pitches: 25.4 mm by the count. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M1.6|M1.6|0.35",
        "M2|M2|0.4",
        "m2,5|M2.5|0.45",
        "M3|M3|0.5",
        "M4|M4|0.7",
        "M5|M5|0.8",
        "M6|M6|1",
        "M8|M8|1.25",
        "M3x0.5|M3x0.5|0.5",
        "m3 x 0,35|M3x0.35|0.35",
        "M10×1.5|M10x1.5|1.5",
        "M5x.5|M5x.5|0.5",
        "10-32|10-32|0.79375",
        "#10-32|10-32|0.79375",
        "10 - 32|10-32|0.79375",
        "10-24 unc|10-24 UNC|1.058333333333",
        "4-40UNC|4-40 UNC|0.635",
        "1/4-28 UNF|1/4-28 UNF|0.907142857143",
        "1/4-32 unef|1/4-32 UNEF|0.79375",
        "8-100 UN|8-100 UN|0.254",
        "0.5|pitch 0.5 mm|0.5",
        "0.5mm|pitch 0.5 mm|0.5",
        "1/40 in|pitch 0.635 mm|0.635",
      })
  void everySpellingIsRead(String typed, String name, double pitch) {
    ScrewThread thread = ScrewThread.parse(typed);
    assertThat(thread.name()).isEqualTo(name);
    assertThat(thread.pitch().mm()).isWithin(1e-9).of(pitch);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "foo", "M", "10-", "-32", "10-0", "10-32 UNX", "M3y0.5", "1e3", "\u001b[2J"})
  void whatIsNoThreadIsRefusedWithExamples(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> ScrewThread.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith(
            "\" is not a thread; type for example M3x0.5, 10-32, 1/4-28 UNF or a pitch in mm");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"M7", "M3x", "M3 x", "M7x", "M9"})
  void aMetricThreadThatIsNotUsualNeedsItsPitch(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> ScrewThread.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("\"" + typed + "\" needs its pitch; type for example M3x0.5");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-0.5mm", "M3x0", "M3x0.0"})
  void aPitchIsAboveZero(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> ScrewThread.parse(typed));
    String said =
        typed.startsWith("M")
            ? "a thread's pitch must be above zero"
            : "\""
                + typed
                + "\" is not a thread; type for example M3x0.5, 10-32, 1/4-28 UNF or a"
                + " pitch in mm";
    assertThat(e).hasMessageThat().isEqualTo(said);
  }

  @Test
  void travelGoesWithTheTurnAndItsDirection() {
    long seed = 32;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      int perInch = 1 + random.nextInt(100);
      ScrewThread thread = ScrewThread.parse("10-" + perInch);
      Turn turn = new Turn(4 * random.nextDouble() - 2);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(thread.travel(turn).inches() * perInch)
          .isWithin(1e-9)
          .of(turn.turns());
      assertThat(thread.travel(turn.opposite()).mm()).isWithin(1e-12).of(-thread.travel(turn).mm());
    }
  }
}
