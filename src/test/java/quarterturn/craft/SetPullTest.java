package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.craft.SetPull.TunedString;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

class SetPullTest {
  private static final Scale SCALE = new Scale(Length.inches(34));

  @Test
  void aTunedStringIsReadAsItIsTyped() {
    TunedString wound = TunedString.parse("E1:.105in:.045in");
    assertThat(wound.note()).isEqualTo(Note.parse("E1"));
    assertThat(wound.gauge())
        .isEqualTo(StringGauge.wound(Length.parse(".105in"), Length.parse(".045in")));
    TunedString plain = TunedString.parse("E4:.010in");
    assertThat(plain.note()).isEqualTo(Note.parse("E4"));
    assertThat(plain.gauge()).isEqualTo(StringGauge.plain(Length.parse(".010in")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "E1", " E1 ", "\u0007E1"})
  void aStringWithoutADiameterIsRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> TunedString.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a string; type NOTE:DIAMETER or NOTE:DIAMETER:CORE");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}| E1");
  }

  @Test
  void aWrongPartIsNamed() {
    assertThat(assertThrows(NotUnderstoodException.class, () -> TunedString.parse(":1")))
        .hasMessageThat()
        .contains("is not a note with its octave");
    assertThat(assertThrows(NotUnderstoodException.class, () -> TunedString.parse("E1:x")))
        .hasMessageThat()
        .contains("is not a length");
    assertThat(assertThrows(NotUnderstoodException.class, () -> TunedString.parse("E1:1:1:1")))
        .hasMessageThat()
        .contains("type DIAMETER or DIAMETER:CORE");
  }

  @Test
  void aSetNeedsAString() {
    NotUnderstoodException e =
        assertThrows(
            NotUnderstoodException.class, () -> new SetPull(SCALE, List.of(), Temperament.ISO_16));
    assertThat(e).hasMessageThat().isEqualTo("a set needs one string or more");
  }

  /** The second way: the pound form of each string, added up. */
  @Test
  void aSetPullsTheSumOfItsStrings() {
    List<TunedString> strings =
        List.of(TunedString.parse("G2:.045in"), TunedString.parse("D2:.065in"));
    SetPull set = new SetPull(SCALE, strings, Temperament.ISO_16);
    double expected = 0;
    for (double[] string : new double[][] {{0.045, 97.998859}, {0.065, 73.416192}}) {
      double poundsPerInch3 = 7850 / 0.45359237 * Math.pow(0.0254, 3);
      double poundsPerInch = poundsPerInch3 * Math.PI / 4 * string[0] * string[0];
      expected += poundsPerInch * Math.pow(2 * 34 * string[1], 2) / 386.0886;
    }
    assertThat(set.total().poundForce()).isWithin(1e-6 * expected).of(expected);
    assertThat(set.of(strings.get(0)).newtons() + set.of(strings.get(1)).newtons())
        .isWithin(1e-9)
        .of(set.total().newtons());
  }

  @Test
  void orderDoesNotMatterAndLowerTuningPullsLess() {
    long seed = 5;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      List<TunedString> strings = new ArrayList<>();
      for (int s = 0; s < 1 + random.nextInt(6); s++) {
        strings.add(
            new TunedString(
                new Note(25 + random.nextInt(40)),
                StringGauge.plain(Length.mm(0.2 + random.nextDouble()))));
      }
      double total = new SetPull(SCALE, strings, Temperament.ISO_16).total().newtons();
      Collections.shuffle(strings, random);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(new SetPull(SCALE, strings, Temperament.ISO_16).total().newtons())
          .isWithin(1e-9 * total)
          .of(total);
      Temperament low = new Temperament(new Frequency(432));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(new SetPull(SCALE, strings, low).total().newtons())
          .isWithin(1e-9 * total)
          .of(total * Math.pow(432 / 440.0, 2));
    }
  }

  @Test
  void theSetKeepsItsStringsToItself() {
    List<TunedString> strings = new ArrayList<>(List.of(TunedString.parse("E1:.105in")));
    SetPull set = new SetPull(SCALE, strings, Temperament.ISO_16);
    strings.clear();
    assertThat(set.strings()).hasSize(1);
  }
}
