package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.craft.Window;
import quarterturn.procedure.LibraryFilesTest;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.clause.ConditionParser;
import quarterturn.procedure.read.clause.MisreadException;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Source;
import quarterturn.unit.NotUnderstoodException;

/**
 * The bounds of safety/bounds.yaml: what can't be meant is out, what people set up is in. The
 * windows that are in are common practice, no source.
 */
class BoundsTest {
  private static Window window(Quantity quantity, String text) {
    Amounts.Range range = Amounts.range(quantity, text);
    return BoundsReader.of(quantity).window(new Window(range.least(), range.most()));
  }

  @ParameterizedTest
  @CsvSource({
    "RELIEF, 0.08..0.20 mm",
    "RELIEF, 0.35..0.50 mm",
    "RELIEF, 0.40..0.55 mm",
    "NUT_CLEARANCE, 0..0.05 mm",
    "NUT_CLEARANCE, 0.15..0.30 mm",
    "ACTION, 1.2..1.6 mm",
    "ACTION, 2.5..3.5 mm",
    "ACTION, 2.6..3.6 mm",
    "INTONATION, -2..2 cents",
    "INTONATION, -5..5 cents",
    "PICKUP_GAP, 1.0..2.0 mm",
    "PICKUP_GAP, 2.8..3.8 mm",
  })
  void whatIsSetUpIsIn(Quantity quantity, String text) {
    Amounts.Range range = Amounts.range(quantity, text);
    assertThat(window(quantity, text)).isEqualTo(new Window(range.least(), range.most()));
  }

  /** Inches with mm behind them, and windows in which nothing would be out. */
  @ParameterizedTest
  @CsvSource({
    "RELIEF, 0.010..0.016 mm",
    "RELIEF, 0..3 mm",
    "RELIEF, 0.3..0.9 mm",
    "RELIEF, 0.30..0.45 in",
    "RELIEF, 0.30..0.34 mm",
    "NUT_CLEARANCE, 0.004..0.008 mm",
    "NUT_CLEARANCE, 0..0.5 mm",
    "ACTION, 0.060..0.080 mm",
    "ACTION, 0.060..0.090 mm",
    "ACTION, 1..4 mm",
    "ACTION, 1.8..2.2 in",
    "INTONATION, -50..50 cents",
    "INTONATION, -0.5..0.5 cents",
    "PICKUP_GAP, 0.08..0.12 mm",
    "PICKUP_GAP, 1..6 mm",
  })
  void whatCannotBeMeantIsOut(Quantity quantity, String text) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> window(quantity, text));
    assertThat(e).hasMessageThat().contains("a range of " + quantity.word() + " lies within ");
    assertThat(e).hasMessageThat().contains("see whether the unit is right");
  }

  @ParameterizedTest
  @CsvSource({
    "RELIEF, 0..76 mm",
    "RELIEF, 0..0.12 mm",
    "NUT_CLEARANCE, 0..0.08 mm",
    "ACTION, 0.02..0.4 mm",
    "ACTION, 0..20 mm",
    "INTONATION, -100..100 cents",
    "PICKUP_GAP, 0..0.6 mm",
    "TEMPERATURE, 32..104 C",
  })
  void aRangeThatCannotBePlausible(Quantity quantity, String text) {
    assertThrows(
        NotUnderstoodException.class,
        () -> BoundsReader.of(quantity).plausible(BoundsReader.span(quantity, text)));
  }

  @ParameterizedTest
  @CsvSource({
    "RELIEF, 0.002 mm",
    "RELIEF, 0.5 mm",
    "NUT_CLEARANCE, 0.002 mm",
    "ACTION, 0.01 mm",
    "ACTION, 2 mm",
    "INTONATION, 20 cents",
    "PICKUP_GAP, 0.02 mm",
    "HUMIDITY, 20 %",
    "TEMPERATURE, 9 C",
  })
  void aGaugeThatCannotBe(Quantity quantity, String text) {
    double step = Amounts.of(quantity, text);
    assertThrows(NotUnderstoodException.class, () -> BoundsReader.of(quantity).gauge(step));
  }

  @ParameterizedTest
  @CsvSource({
    "relief repeats within 3 mm",
    "relief does not repeat within 0.5 mm",
    "relief repeats within 0.002 mm",
    "nut-clearance repeats within 0.5 mm",
    "relief below 0.012 mm",
    "relief at least 12 mm",
    "relief differs by more than 4 mm",
    "relief differs by more than 0.9 mm",
    "humidity below 4 %",
    "humidity at least 95 %",
    "humidity below 12 %",
    "action below 0.08 mm",
    "intonation at least 100 cents",
  })
  void anAmountThatCannotBe(String condition) {
    MisreadException e =
        assertThrows(
            MisreadException.class, () -> ConditionParser.parse(condition, BoundsReader::of));
    assertThat(e).hasMessageThat().contains("ee whether the unit is right");
  }

  @Test
  void aKindInInchesIsRefused() {
    String inches = LibraryFilesTest.KINDS.replace("0.15..0.30 mm", "0.006..0.012 mm");
    UnreadableException e =
        assertThrows(
            UnreadableException.class, () -> Readings.kinds("kinds.yaml", Readings.utf8(inches)));
    assertThat(e).hasMessageThat().contains("bad-value: a range of relief lies within 0..1 mm");
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void everyBoundSaysItsReason(Quantity quantity) {
    String text = new String(Readings.bytes("/safety/bounds.yaml"), StandardCharsets.UTF_8);
    // A part of the bow shares the bounds of the relief.
    Quantity listed = quantity.ofPart() ? Quantity.RELIEF : quantity;
    String part = text.split("\n  " + listed.word() + ":\n", -1)[1].split("\n  [a-z]", -1)[0];
    assertWithMessage(part)
        .that(part)
        .containsMatch("# (Common practice|Derived|Our policy|Estimate|By definition)");
  }

  @Test
  void aDamagedFileIsRefused() throws Exception {
    byte[] bytes = Readings.bytes("/safety/bounds.yaml");
    Map<Quantity, Bounds> all = BoundsReader.read(new Faults(Source.of("b.yaml", bytes)));
    assertThat(all.keySet()).containsExactlyElementsIn(Quantity.values());
    String text =
        new String(bytes, StandardCharsets.UTF_8).replace("width: 0.05..0.5 mm", "wide: 1");
    UnreadableException e =
        assertThrows(
            UnreadableException.class,
            () -> BoundsReader.read(new Faults(Source.of("b.yaml", Readings.utf8(text)))));
    assertThat(e).hasMessageThat().contains("a bound has no key \"wide\"");
  }
}
