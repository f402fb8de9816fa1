package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Instrument;
import quarterturn.session.InventedInstruments;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** Facts of invented instruments: as typed, as kept, and what is refused. */
class FormFieldsTest {
  private static final Instant CREATED = Instant.parse("2027-03-01T09:00:00Z");
  private static final Kind.Target INVENTED = new Kind.Target(new Window(0.3, 0.45), "invented");
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
          Map.of(Style.LIGHT, INVENTED, Style.MEDIUM, INVENTED, Style.HARD, INVENTED));

  @TempDir Path folder;

  private static Instrument typed(FormField trait, String text) {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, "demo-bass");
    typed.put(trait, text);
    return FormFields.instrument("bass", CREATED, typed);
  }

  private static Instrument full() {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, "demo-bass");
    typed.put(FormField.STYLE, "Medium");
    typed.put(FormField.JOINT_FRET, "17");
    typed.put(FormField.SCALE, "34in");
    typed.put(FormField.TUNING, "e1, a1 d2 g2");
    typed.put(FormField.GAUGES, ".105 .085 .065 .045");
    typed.put(FormField.RADIUS, "12in");
    typed.put(FormField.NECK, "bolt-on");
    typed.put(FormField.NUT, "slotted");
    typed.put(FormField.BRIDGE, "adjustable");
    typed.put(FormField.HANDED, "left");
    typed.put(FormField.STRINGS, "flat wound");
    typed.put(FormField.WINDOW_RELIEF, "12..18 thou");
    typed.put(FormField.WINDOW_INTONATION, "-2 to 3");
    return FormFields.instrument("bass", CREATED, typed);
  }

  @Test
  void theFileIsReadableByPeople() throws IOException {
    Store store = Store.at(folder);
    store.add(full());
    assertThat(Files.readString(folder.resolve("instruments/bass.yaml")))
        .isEqualTo(
            """
            # An instrument known to quarterturn.
            name: "bass"
            kind: "demo-bass"
            style: "medium"
            joint-fret: 17
            strings: "flat wound"
            scale: "863.6 mm"
            tuning: "E1 A1 D2 G2"
            gauges: "2.667 2.159 1.651 1.143 mm"
            radius: "304.8 mm"
            neck: "bolt-on"
            nut: "slotted"
            bridge: "adjustable"
            handed: "left"
            windows:
              relief: "0.3048..0.4572 mm"
              intonation: "-2..3 cents"
            created: "2027-03-01T09:00:00Z"
            """);
    assertThat(store.instrument("bass")).isEqualTo(full());
  }

  @Test
  void randomInstrumentsComeBackAsTheyWere() throws IOException {
    Store store = Store.at(folder);
    InventedInstruments random = new InventedInstruments(20270301);
    store.add(random.next("bass"));
    for (int i = 0; i < 300; i++) {
      Instrument instrument = random.next("bass");
      store.replace(instrument);
      assertThat(store.instrument("bass")).isEqualTo(instrument);
      assertThat(FormFields.instrument("bass", instrument.created(), FormFields.of(instrument)))
          .isEqualTo(instrument);
    }
    try (var all = Files.list(folder.resolve("instruments"))) {
      assertThat(all.toList()).containsExactly(folder.resolve("instruments/bass.yaml"));
    }
  }

  @Test
  void onlyOneThatIsThereIsReplaced() {
    IOException e = assertThrows(IOException.class, () -> Store.at(folder).replace(full()));
    assertThat(e).hasMessageThat().isEqualTo("there is no instrument bass; add it first");
  }

  /** Inches to millimetres by definition: 25.4. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".105 .085 .065 .045|2.667 2.159 1.651 1.143 mm",
        ".160 .120 .085 .065|4.064 3.048 2.159 1.651 mm",
        "105 85 65 45 thou|2.667 2.159 1.651 1.143 mm",
        ".105in .085in .065 .045 in|2.667 2.159 1.651 1.143 mm",
        "2.667; 2.159; 1.651 mm 45thou|2.667 2.159 1.651 1.143 mm",
        "0,25, 0,33, 0,43, 0,66|0.25 0.33 0.43 0.66 mm",
        "1/64in 1/32 in .65mm 1.1|0.3969 0.7938 0.65 1.1 mm",
      })
  void gaugesAsPeopleTypeThem(String text, String kept) {
    assertThat(FormFields.of(typed(FormField.GAUGES, text))).containsEntry(FormField.GAUGES, kept);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.30..0.45|0.3|0.45",
        ".30...45 mm|0.3|0.45",
        "0,3 to 0,45|0.3|0.45",
        "12..18 thou|0.3048|0.4572",
        ".012in..0.45mm|0.3048|0.45",
        "1/64 to 1/32 in|0.3969|0.7938",
      })
  void windowsAsPeopleTypeThem(String text, double low, double high) {
    assertThat(typed(FormField.WINDOW_RELIEF, text).windows())
        .containsExactly(Aim.RELIEF, new Window(low, high));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "STYLE|loud|\"loud\" is none of light, medium, hard",
        "JOINT_FRET|high|\"high\" is not a fret; type for example 17",
        "JOINT_FRET|8|the joint fret of demo-bass lies between 9 and 20, not 8",
        "JOINT_FRET|21|the joint fret of demo-bass lies between 9 and 20, not 21",
        "JOINT_FRET|0|the joint fret lies between 1 and 36, not 0",
        "SCALE|34|a scale lies between 300 and 1000 mm, not 34 mm; write inches as 34in",
        "SCALE|1001|a scale lies between 300 and 1000 mm, not 1001 mm; write inches as 34in",
        "TUNING|E1 A1 D2 H2|\"H2\" is not a note with its octave; type for example E1, F#2 or Bb0",
        "TUNING|E1 A1 D2|demo-bass has 4 strings; give as many notes, not 3",
        "TUNING|E1 A1 D2 G2 C3 C3 C3 C3 C3 C3 C3 C3 C3|give 1 to 12 notes, not 13",
        "GAUGES|.105 .085|demo-bass has 4 strings; give as many gauges, not 2",
        "GAUGES|.105 .085 mm|no string is 0.105 mm thick; write inches as .105in and thousandths"
            + " as 105 thou",
        "GAUGES|thick|\"thick\" is not a length; type for example 0.30, 0.30 mm, .012\", 12 thou"
            + " or 1/64 in",
        "RADIUS|12|a fingerboard's radius lies between 100 and 2000 mm, not 12 mm; write inches as"
            + " 12in, or flat",
        "RADIUS|2000.1|a fingerboard's radius lies between 100 and 2000 mm, not 2000.1 mm; write"
            + " inches as 12in, or flat",
        "NECK|glued|\"glued\" is none of bolt-on, set, unknown",
        "NUT|bone|\"bone\" is none of slotted, locking, zero-fret",
        "BRIDGE|loose|\"loose\" is none of adjustable, two-posts, paired, locked, fixed, floating",
        "HANDED|both|\"both\" is none of right, left",
        "WINDOW_RELIEF|0.3|\"0.3\" is not a range; type for example 0.30..0.45 mm",
        "WINDOW_RELIEF|0.5..0.3|the first number of a range must be the smaller one",
        "WINDOW_RELIEF|12..18|a range of relief lies within 0..1 mm and is 0.05 to 0.5 mm wide, not"
            + " 12..18 mm; see whether the unit is right",
        "WINDOW_RELIEF|0.010..0.016 mm|a range of relief lies within 0..1 mm and is 0.05 to 0.5 mm"
            + " wide, not 0.01..0.016 mm; see whether the unit is right",
        "WINDOW_INTONATION|-2..2 mm|\"-2 mm\" is not an interval; type for example +6, -2.5 or 3"
            + " cents",
        "WINDOW_INTONATION|-60..2|a range of intonation lies within -10..10 cents and is 2 to 20"
            + " cents wide, not -60..2 cents; see whether the unit is right",
      })
  void whatIsRefusedIsToldWithWhatIsAllowed(FormField trait, String text, String says) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> FormFields.check(trait, text, BASS));
    assertThat(e).hasMessageThat().isEqualTo(says);
  }

  @Test
  void whatIsAllowedPasses() {
    FormFields.of(full()).forEach((trait, text) -> FormFields.check(trait, text, BASS));
    FormFields.check(FormField.JOINT_FRET, "9", BASS);
    FormFields.check(FormField.JOINT_FRET, "20", BASS);
    FormFields.check(FormField.SCALE, "300", BASS);
    FormFields.check(FormField.SCALE, "1000 mm", BASS);
    FormFields.check(FormField.RADIUS, "FLAT", BASS);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "scale: 34|its field \"scale\" is wrong: a scale lies between 300 and 1000 mm, not 34 mm;"
            + " write inches as 34in",
        "scale: [1]|its field \"scale\" must be text",
        "neck: glued|its field \"neck\" is wrong: \"glued\" is none of bolt-on, set, unknown",
        "windows: wide|its field \"windows\" must be a group of named values",
        "windows: {depth: 0..1 mm}|it has an unknown field \"depth\"",
        "windows: {relief: 1}|its field \"relief\" must be text",
        "windows: {relief: 1..9 mm}|its field \"window-relief\" is wrong: a range of relief lies"
            + " within 0..1 mm and is 0.05 to 0.5 mm wide, not 1..9 mm; see whether the unit is"
            + " right",
        "gauges: 2.6 mm|give as many gauges as notes: 4, not 1",
      })
  void aFileThatIsWrongIsNamed(String line, String says) throws IOException {
    Files.createDirectories(folder.resolve("instruments"));
    Files.writeString(
        folder.resolve("instruments/bass.yaml"),
        "name: bass\nkind: demo-bass\ntuning: E1 A1 D2 G2\ncreated: 2027-03-01T09:00:00Z\n"
            + line
            + "\n");
    IOException e = assertThrows(IOException.class, () -> Store.at(folder).instrument("bass"));
    String said = says.startsWith("it has") ? says.substring("it".length()) : ": " + says;
    assertThat(e).hasMessageThat().isEqualTo("bass.yaml" + said);
  }

  @Test
  void handWrittenFactsAreReadAsTyped() throws IOException {
    Files.createDirectories(folder.resolve("instruments"));
    Files.writeString(
        folder.resolve("instruments/bass.yaml"),
        """
        name: bass
        kind: demo-bass
        scale: 34 in
        radius: 305
        gauges: .105 .085 .065 .045
        windows: {action-low: 70..85 thou}
        created: 2027-03-01T09:00:00Z
        """);
    Instrument read = Store.at(folder).instrument("bass");
    assertThat(read.build().scale()).isEqualTo(Length.mm(863.6));
    assertThat(String.valueOf(read.build().radius())).isEqualTo("305 mm");
    assertThat(read.build().gauges()).hasSize(4);
    assertThat(read.windows()).containsExactly(Aim.ACTION_LOW, new Window(1.778, 2.159));
  }
}
