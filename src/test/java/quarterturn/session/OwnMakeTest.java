package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;

/** What an instrument is made like chooses among its kind's windows: common practice, no source. */
class OwnMakeTest {
  private static Kind made(String kind, FormField field, String text) {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, kind);
    typed.put(field, text);
    Instrument instrument = FormFields.instrument("demo", Instant.EPOCH, typed);
    Event.Own own = Objects.requireNonNull(OwnMake.of(instrument));
    return OwnMake.of(Practising.relief().kind(kind), own);
  }

  @ParameterizedTest
  @CsvSource({
    "bass-34, NUT, zero-fret, NUT_CLEARANCE, 0, 0.05",
    "bass-34, NUT, locking, NUT_CLEARANCE, 0.12, 0.22",
    "bass-35, WINDOW_ACTION_HIGH, 1.8..2.2, ACTION, 2.3, 2.8",
    "bass-35, WINDOW_ACTION_LOW, 1.8..2.2, ACTION, 1.8, 2.2",
    "electric-25, PICKUP, covered-bridge, PICKUP_GAP, 1.5, 2.5",
    "electric-25, PICKUP, bare-neck, PICKUP_GAP, 2.4, 3.4",
    "bass-34, PICKUP, bare-neck, PICKUP_GAP, 2.8, 3.8",
    "acoustic-steel, PICKUP, bare-neck, INTONATION, -5, 5",
    "acoustic-steel, BRIDGE, adjustable, INTONATION, -2, 2",
    "bass-34, BRIDGE, fixed, INTONATION, -5, 5",
    "bass-34, BRIDGE, two-posts, INTONATION, -3, 3",
  })
  void itsMakeChoosesTheWindow(
      String id, FormField field, String text, Quantity quantity, double low, double high) {
    Kind kind = made(id, field, text);
    for (Style style : kind.styles()) {
      if (style == Style.MEDIUM || quantity != Quantity.ACTION) {
        assertThat(kind.target(quantity, style, 0).window()).isEqualTo(new Window(low, high));
      }
    }
  }

  @Test
  void anOwnWindowGoesBeforeThatOfItsNut() {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, "bass-34");
    typed.put(FormField.NUT, "zero-fret");
    typed.put(FormField.WINDOW_NUT_CLEARANCE, "0.1..0.2 mm");
    Instrument instrument = FormFields.instrument("demo", Instant.EPOCH, typed);
    Event.Own own = Objects.requireNonNull(OwnMake.of(instrument));
    Kind kind = OwnMake.of(Practising.relief().kind("bass-34"), own);
    assertThat(kind.target(Quantity.NUT_CLEARANCE, Style.HARD, 3).window())
        .isEqualTo(new Window(0.1, 0.2));
  }

  @Test
  void equalNotesAreTwoStrings() {
    Kind kind = made("electric-25", FormField.TUNING, "D2 A2 D3 A3 D4 D4");
    assertThat(kind.strings()).containsExactly("D2", "A2", "D3", "A3", "D4", "D4'").inOrder();
    assertThat(kind.notes()).isEqualTo(List.of("D2", "A2", "D3", "A3", "D4", "D4"));
  }

  /** Sessions of earlier versions say of a bridge only whether its saddles are fixed. */
  @Test
  void anOlderSessionsFixedSaddlesAreAFixedBridge() {
    Event.Own own =
        new Event.Own(null, List.of(), List.of(), null, true, Map.of(), null, null, null, null);
    Kind kind = OwnMake.of(Practising.relief().kind("bass-34"), own);
    assertThat(kind.make().bridge()).isEqualTo(BridgeKind.FIXED);
  }
}
