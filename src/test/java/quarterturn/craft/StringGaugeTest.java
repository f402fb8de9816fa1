package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class StringGaugeTest {
  @Test
  @HoldsTo("unitweight.helix_numeric")
  void aWrapWeighsWhatItsHelixDoes() {
    try (Reference helix = Reference.of("unitweight.helix_numeric")) {
      Length core = Length.inches(helix.inputs().number("core_in"));
      Length outer = Length.inches(helix.inputs().number("outer_in"));
      double density = helix.inputs().number("rho_wrap");
      double rel = helix.tolerance("rel");
      double closed = StringGauge.wrapKgPerMetre(outer, core, density);
      double numeric = byHelix(outer, core, density);
      double formula = helix.expected().number("formula_kg_per_m");
      assertWithMessage(helix.because()).that(closed).isWithin(rel * formula).of(formula);
      double turned = helix.expected().number("helix_numeric_kg_per_m");
      assertWithMessage(helix.because()).that(closed).isWithin(rel * turned).of(turned);
      assertThat(numeric).isWithin(rel * turned).of(turned);
      assertThat(numeric / closed).isWithin(rel).of(helix.expected().number("ratio"));
    }
  }

  /**
   * The second way: turns of wire that touch, each a helix whose length is integrated. Along the
   * axis a tilted wire takes up more than its diameter, {@code w / cos(tilt)}.
   */
  private static double byHelix(Length outer, Length core, double density) {
    double wire = (outer.mm() - core.mm()) / 2000;
    double radius = (outer.mm() + core.mm()) / 4000;
    double pitch = wire;
    for (int i = 0; i < 50; i++) {
      double tilt = Math.atan(pitch / (2 * Math.PI * radius));
      pitch = wire / Math.cos(tilt);
    }
    double advance = pitch;
    double length =
        new IterativeLegendreGaussIntegrator(5, 1e-13, 1e-15)
            .integrate(
                100_000,
                angle ->
                    Math.hypot(
                        radius * Math.hypot(Math.sin(angle), Math.cos(angle)),
                        advance / (2 * Math.PI)),
                0,
                2 * Math.PI);
    return density * Math.PI * wire * wire / 4 * length / pitch;
  }

  @Test
  void theHelixAgreesForEveryWoundString() {
    long seed = 105;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      double outer = 0.8 + 3 * random.nextDouble();
      double core = outer * (0.3 + 0.5 * random.nextDouble());
      StringGauge gauge = StringGauge.wound(Length.mm(outer), Length.mm(core));
      double steel = 7850 * Math.PI / 4 * core * core / 1e6;
      double expected = steel + byHelix(gauge.diameter(), Length.mm(core), 8000);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(gauge.unitWeight().kgPerMetre())
          .isWithin(1e-9 + 1e-8 * expected)
          .of(expected);
    }
  }

  /** Several thin layers over each other weigh what one layer of the same outer size does. */
  @Test
  void layersDoNotMatter() {
    Length core = Length.inches(0.045);
    Length middle = Length.inches(0.069);
    Length outer = Length.inches(0.105);
    assertThat(
            StringGauge.wrapKgPerMetre(middle, core, 8000)
                + StringGauge.wrapKgPerMetre(outer, middle, 8000))
        .isWithin(1e-15)
        .of(StringGauge.wrapKgPerMetre(outer, core, 8000));
  }

  /** ASTM A228 music wire, 7.85 g/cm3: a metre of 1 mm wire weighs a cylinder's share of that. */
  @Test
  void aPlainStringWeighsItsSteel() {
    StringGauge gauge = StringGauge.plain(Length.mm(1));
    assertThat(gauge.unitWeight().gramsPerMetre()).isWithin(1e-12).of(7.85 * Math.PI / 4);
    assertThat(gauge.steel()).isEqualTo(Length.mm(1));
    assertThat(gauge.core()).isNull();
    assertThat(StringGauge.area(Length.mm(2))).isWithin(1e-18).of(Math.PI * 1e-6);
    assertThat(StringGauge.stretchNewtons(Length.mm(2))).isWithin(1e-6).of(205e3 * Math.PI);
  }

  @Test
  void weightGoesWithTheSquareOfAllDiameters() {
    long seed = 8000;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double outer = 0.8 + random.nextDouble();
      double core = outer * (0.2 + 0.6 * random.nextDouble());
      double factor = 0.5 + random.nextDouble();
      double one =
          StringGauge.wound(Length.mm(outer), Length.mm(core)).unitWeight().gramsPerMetre();
      double other =
          StringGauge.wound(Length.mm(outer * factor), Length.mm(core * factor))
              .unitWeight()
              .gramsPerMetre();
      assertWithMessage("seed %s, round %s", seed, i)
          .that(other)
          .isWithin(1e-9)
          .of(one * factor * factor);
    }
  }

  @ParameterizedTest
  @CsvSource({
    ".010in, 0.254, ",
    "0.5, 0.5, ",
    ".105in:.030in, 2.667, 0.762",
    "105 thou : 45 thou, 2.667, 1.143",
    "0.15, 0.15, ",
    "5, 5, ",
  })
  void everySpellingIsRead(String typed, double diameter, Double core) {
    StringGauge gauge = StringGauge.parse(typed);
    assertThat(gauge.diameter().mm()).isWithin(1e-9).of(diameter);
    if (core == null) {
      assertThat(gauge.core()).isNull();
    } else {
      assertThat(gauge.steel().mm()).isWithin(1e-9).of(core);
    }
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 25;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      Length outer = Length.mm((3000 + random.nextInt(40_000)) / 1e4);
      Length core = Length.mm((1500 + random.nextInt(1400)) / 1e4);
      StringGauge gauge =
          random.nextBoolean() ? StringGauge.plain(outer) : StringGauge.wound(outer, core);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(StringGauge.parse(gauge.toString()))
          .isEqualTo(gauge);
    }
    assertThat(StringGauge.wound(Length.mm(2.667), Length.mm(0.762)).toString())
        .isEqualTo("2.667 mm:0.762 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {".105", "0.1499", "5.001", "105", "-1", "0"})
  void aSizeThatNoStringHasIsRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> StringGauge.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo(
            "no string is "
                + Length.parse(typed)
                + " thick; write inches as .105in and thousandths as 105 thou");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1:2:3", "1::", "\u0007:1:1"})
  void moreThanTwoSizesAreRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> StringGauge.parse(typed));
    assertThat(e).hasMessageThat().endsWith("\" is not a string; type DIAMETER or DIAMETER:CORE");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "thick", "1:", ":1", "1:thin"})
  void whatIsNoLengthIsRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> StringGauge.parse(typed));
    assertThat(e).hasMessageThat().contains("is not a length; type for example");
  }

  @Test
  void aStringHasADiameterAndACoreWithinIt() {
    for (double no : new double[] {0, -1}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> StringGauge.plain(Length.mm(no)));
      assertThat(e).hasMessageThat().isEqualTo("a string's diameter must be above zero");
    }
    for (double no : new double[] {0, -1, 2, 3}) {
      NotUnderstoodException e =
          assertThrows(
              NotUnderstoodException.class, () -> StringGauge.wound(Length.mm(2), Length.mm(no)));
      assertThat(e)
          .hasMessageThat()
          .isEqualTo("a core must be above zero and thinner than its string");
    }
    assertThat(StringGauge.wound(Length.mm(2), Length.mm(1.999)).steel().mm()).isEqualTo(1.999);
  }

  /** Sets end their plain strings at .026 in (common practice, no source); a .105 is wound. */
  @Test
  void aThickStringIsNoPlainOne() {
    for (String plain : List.of(".008in", ".026in", "0.8mm")) {
      assertThat(StringGauge.checkPlain(Length.parse(plain))).isEqualTo(Length.parse(plain));
    }
    for (String wound : List.of(".032in", ".045in", ".105in")) {
      assertThat(
              assertThrows(
                  NotUnderstoodException.class, () -> StringGauge.checkPlain(Length.parse(wound))))
          .hasMessageThat()
          .endsWith(" thick is wound (plain ones end at 0.8 mm); give its core too");
    }
  }
}
