package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ForceTest {
  /** Standard gravity: third CGPM, 1901. Avoirdupois pound: yard and pound agreement of 1959. */
  @Test
  void thePoundForceIsExact() {
    assertThat(Force.GRAVITY).isEqualTo(9.80665);
    assertThat(Force.NEWTONS_PER_POUND_FORCE).isWithin(1e-15).of(4.4482216152605);
    assertThat(Force.newtons(4.4482216152605).poundForce()).isWithin(1e-15).of(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "180|180",
        "180N|180",
        "180 n|180",
        "`  180 N  `|180",
        "+180|180",
        "-1.5 N|-1.5",
        "1,5 N|1.5",
        ".5|0.5",
        ",5 N|0.5",
        "5.|5",
        "0|0",
        "123456789|123456789",
        "1 lbf|4.4482216152605",
        "1lb|4.4482216152605",
        "40 LBS|177.92886461042",
        "1 kgf|9.80665",
        "18 kg|176.5197",
      })
  void everySpellingIsRead(String typed, double newtons) {
    assertThat(Force.parse(typed).newtons()).isWithin(1e-9).of(newtons);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ".",
        "-",
        "N",
        "180 dyn",
        "180 N N",
        "1e3",
        "NaN",
        "0x1",
        "--3",
        "1.2.3",
        "3 4 N",
        "1234567890",
        "180 lbf2",
        "\u001b[2J",
        "18\u0007"
      })
  void whatIsNoForceIsRefusedWithExamples(String typed) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> Force.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a force; type for example 180, 180 N or 40 lbf");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void theMessageSaysWhatWasTyped() {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Force.parse("180 dyn"));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("\"180 dyn\" is not a force; type for example 180, 180 N or 40 lbf");
  }

  @Test
  void theExamplesInTheMessageAreUnderstood() {
    for (String example : new String[] {"180", "180 N", "40 lbf"}) {
      assertThat(Force.parse(example).newtons()).isGreaterThan(100.0);
    }
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 1901;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      Force force = Force.newtons(Math.rint((random.nextDouble() - 0.5) * 1e8) / 1e4);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Force.parse(force.toString()).newtons())
          .isWithin(1e-9)
          .of(force.newtons());
    }
  }

  @Test
  void poundsAndNewtonsConvertBackAndForth() {
    long seed = 1959;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double pounds = Math.rint(random.nextDouble() * 1e6) / 1e3;
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Force.parse(pounds + " lbf").poundForce())
          .isWithin(1e-9)
          .of(pounds);
    }
  }

  @Test
  void forcesAreFiniteAndPrinted() {
    for (double no : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> Force.newtons(no));
      assertThat(e).hasMessageThat().isEqualTo("a force must be a finite number of newtons");
    }
    assertThat(Force.newtons(180).toString()).isEqualTo("180 N");
    assertThat(Force.newtons(0.1 + 0.2).toString()).isEqualTo("0.3 N");
  }
}
