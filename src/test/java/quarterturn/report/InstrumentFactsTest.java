package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.unit.Length;

/** Pages of invented instruments. */
class InstrumentFactsTest {
  private static final Instant CREATED = Instant.parse("2027-03-01T09:00:00Z");
  private static final Kind BASS =
      new Kind(
          "demo-bass",
          "An invented bass",
          Length.inches(34),
          List.of("E1", "A1", "D2", "G2"),
          20,
          17,
          8,
          Prior.BASS,
          Map.of(Style.MEDIUM, new Kind.Target(new Window(0.3, 0.45), "invented")));

  private static List<String> page(Map<FormField, String> more, boolean known) {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, "demo-bass");
    typed.putAll(more);
    Map<String, String> facts =
        InstrumentFacts.of(FormFields.instrument("mine", CREATED, typed), known ? BASS : null);
    return InstrumentPages.show(facts, List.of(), Told.DATES);
  }

  @Test
  void everyFactOfItsOwn() {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.STYLE, "medium");
    typed.put(FormField.JOINT_FRET, "16");
    typed.put(FormField.SCALE, "34in");
    typed.put(FormField.TUNING, "D1 A1 D2 G2");
    typed.put(FormField.GAUGES, ".105 .085 .065 .045");
    typed.put(FormField.RADIUS, "flat");
    typed.put(FormField.NECK, "bolt-on");
    typed.put(FormField.NUT, "zero-fret");
    typed.put(FormField.BRIDGE, "adjustable");
    typed.put(FormField.HANDED, "left");
    typed.put(FormField.STRINGS, "flat wound");
    typed.put(FormField.WINDOW_RELIEF, "0.2..0.3");
    typed.put(FormField.WINDOW_NUT_CLEARANCE, "0.3..0.5");
    typed.put(FormField.WINDOW_ACTION_LOW, "1.8..2.2");
    typed.put(FormField.WINDOW_ACTION_HIGH, "1.4..1.8");
    typed.put(FormField.WINDOW_INTONATION, "-2..2");
    typed.put(FormField.WINDOW_PICKUP_LOW, "2.5..3.5");
    typed.put(FormField.WINDOW_PICKUP_HIGH, "2..3");
    assertThat(page(typed, true))
        .containsExactly(
            "Name:               mine",
            "Kind:               An invented bass",
            "Player:             medium",
            "Joint fret:         fret 16",
            "Scale:              863.6 mm",
            "Tuning:             D1 A1 D2 G2",
            "Gauges:             2.667 2.159 1.651 1.143 mm",
            "Fingerboard radius: flat",
            "Neck:               bolt-on",
            "Nut:                zero-fret",
            "Bridge:             adjustable",
            "Handed:             left",
            "Strings:            flat wound",
            "Relief range:       0.2 to 0.3 mm (its own)",
            "Nut range:          0.3 to 0.5 mm (its own)",
            "Action range, low:  1.8 to 2.2 mm (its own)",
            "Action range, high: 1.4 to 1.8 mm (its own)",
            "Intonation range:   -2 to 2 cents (its own)",
            "Pickup range, low:  2.5 to 3.5 mm (its own)",
            "Pickup range, high: 2 to 3 mm (its own)",
            "",
            "No session yet.")
        .inOrder();
  }

  @Test
  void whatItsKindSaysWhereItHasNone() {
    assertThat(page(Map.of(FormField.STYLE, "medium"), true))
        .containsExactly(
            "Name:         mine",
            "Kind:         An invented bass",
            "Player:       medium",
            "Joint fret:   fret 17, as usual for its kind",
            "Scale:        863.6 mm, as usual for its kind",
            "Tuning:       E1 A1 D2 G2, as usual for its kind",
            "Relief range: 0.30 to 0.45 mm (invented)",
            "",
            "No session yet.")
        .inOrder();
  }

  @Test
  void aKindThatIsGoneStandsForItself() {
    assertThat(page(Map.of(FormField.NECK, "set"), false))
        .containsExactly(
            "Name:   mine",
            "Kind:   demo-bass",
            "Player: asked each time",
            "Neck:   set",
            "",
            "No session yet.")
        .inOrder();
  }
}
