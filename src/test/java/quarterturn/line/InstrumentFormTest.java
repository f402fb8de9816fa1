package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Dialogue;
import quarterturn.session.store.FormField;
import quarterturn.session.store.InstrumentDialogue;
import quarterturn.unit.Length;

/** Whole guided entries on invented kinds; lines after a question's colon are what was typed. */
class InstrumentFormTest {
  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("demo-bass", kind("demo-bass", List.of("E1", "A1", "D2", "G2")));
    KINDS.put("demo-five", kind("demo-five", List.of("B0", "E1", "A1", "D2", "G2")));
  }

  private static Kind kind(String id, List<String> strings) {
    Kind.Target target = new Kind.Target(new Window(0.3, 0.45), "invented");
    return new Kind(
        id,
        "Invented",
        Length.inches(34),
        strings,
        20,
        17,
        8,
        Prior.BASS,
        Map.of(Style.LIGHT, target, Style.MEDIUM, target, Style.HARD, target));
  }

  private record Answers(Map<FormField, String> fields, Dialogue.End end) {}

  private record Entry(String printed, Answers answers) {}

  private static Entry entry(Map<FormField, String> present, String... typed) throws IOException {
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    String input = List.of(typed).stream().map(t -> t + "\n").collect(Collectors.joining());
    PipeSource in = new PipeSource(new StringReader(input), writer, false);
    InstrumentDialogue dialogue = new InstrumentDialogue(present, KINDS);
    Dialogue.End end = DialogueLines.run(dialogue, in, writer);
    Answers answers = new Answers(dialogue.fields(), end);
    String printed =
        out.toString().lines().map(String::stripTrailing).collect(Collectors.joining("\n"));
    return new Entry(printed, answers);
  }

  private static final String HEAD =
      """
      Enter keeps what stands in brackets, none clears it, done keeps all that is
      left, and quit leaves without a change.
      1 of 21. The kind of instrument: demo-bass, demo-five.
      """;

  @Test
  void aNewOneFromFirstToLast() throws IOException {
    Entry entry =
        entry(
            Map.of(),
            "",
            "none",
            "Demo-Bass",
            "loud",
            "MEDIUM",
            "",
            "34",
            "34in",
            "",
            ".105 .085",
            ".105 .085 .065 .045",
            "flat",
            "bolt-on",
            "",
            "two-way",
            "floating",
            "bare-neck",
            "left",
            "a wound set",
            "0.5..0.3",
            "0.35..0.45",
            "",
            "",
            "",
            "-2 to 2",
            "",
            "none");
    assertThat(entry.printed())
        .isEqualTo(
            HEAD
                + """
                Kind [not known] >
                Not taken: choose one of demo-bass, demo-five.
                Kind [not known] > none
                Not taken: choose one of demo-bass, demo-five.
                Kind [not known] > Demo-Bass
                Taken: demo-bass.
                2 of 21. How hard the player plays: light, medium, hard.
                Player [asked each time] > loud
                Not taken: "loud" is none of light, medium, hard.
                Player [asked each time] > MEDIUM
                Taken: medium.
                3 of 21. The fret nearest the body joint, where it is not the usual one.
                Joint fret [17, as usual for its kind] >
                4 of 21. Scale length, 300 to 1000 mm, such as 34in or 650 mm.
                Scale [863.6 mm, as usual for its kind] > 34
                Not taken: a scale lies between 300 and 1000 mm, not 34 mm; write inches as
                34in.
                Scale [863.6 mm, as usual for its kind] > 34in
                Taken: 863.6 mm.
                5 of 21. Notes of the open strings, lowest first, such as E1 A1 D2 G2.
                Tuning [E1 A1 D2 G2, as usual for its kind] >
                6 of 21. String diameters in the same order, such as .105 .085 .065 .045 in.
                Gauges [not known] > .105 .085
                Not taken: demo-bass has 4 strings; give as many gauges, not 2.
                Gauges [not known] > .105 .085 .065 .045
                Taken: 2.667 2.159 1.651 1.143 mm.
                7 of 21. Radius of the fingerboard, 100 to 2000 mm, such as 12in; or flat.
                Fingerboard radius [not known] > flat
                Taken: flat.
                8 of 21. How the neck is joined: bolt-on, set or unknown.
                Neck [not known] > bolt-on
                Taken: bolt-on.
                9 of 21. What guides the strings: slotted, locking or zero-fret.
                Nut [not known] >
                10 of 21. The truss rod: single, two-way, two-rods or none-fitted.
                Rod [not known] > two-way
                Taken: two-way.
                11 of 21. The bridge: adjustable (saddles on screws), two-posts, paired (two
                strings a saddle), locked (saddles with locks), fixed or floating (balanced by
                springs).
                Bridge [not known] > floating
                Taken: floating.
                12 of 21. The pickup that is set: covered-neck, covered-bridge, bare-neck or
                bare-bridge. Bare is one of bare rod magnets.
                Pickup [not known] > bare-neck
                Taken: bare-neck.
                13 of 21. The hand that plucks: right or left.
                Handed [not known] > left
                Taken: left.
                14 of 21. A note on the strings that are on, in one line.
                Strings [not known] > a wound set
                Taken: a wound set.
                15 of 21. A range of its own for relief, such as 0.30..0.45 mm.
                Relief range [0.30 to 0.45 mm (invented)] > 0.5..0.3
                Not taken: the first number of a range must be the smaller one.
                Relief range [0.30 to 0.45 mm (invented)] > 0.35..0.45
                Taken: 0.35..0.45 mm.
                16 of 21. A range of its own for the clearance at the first fret, such as
                0.3..0.5 mm.
                Nut range [none of its own] >
                17 of 21. A range of its own for the action of the lowest string, such as
                1.8..2.2 mm.
                Action range, low [none of its own] >
                18 of 21. A range of its own for the action of the highest string, such as
                1.4..1.8 mm.
                Action range, high [none of its own] >
                19 of 21. A range of its own for the intonation, such as -2..2 cents.
                Intonation range [none of its own] > -2 to 2
                Taken: -2..2 cents.
                20 of 21. A range of its own for the pickup gap of the lowest string, such as
                2.5..3.5 mm.
                Pickup range, low [none of its own] >
                21 of 21. A range of its own for the pickup gap of the highest string, such as
                2.0..3.0 mm.
                Pickup range, high [none of its own] > none
                Taken: none.\
                """
                    .stripTrailing());
    assertThat(entry.answers().end()).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(entry.answers().fields())
        .containsExactly(
            FormField.KIND, "demo-bass",
            FormField.STYLE, "medium",
            FormField.SCALE, "863.6 mm",
            FormField.GAUGES, "2.667 2.159 1.651 1.143 mm",
            FormField.RADIUS, "flat",
            FormField.NECK, "bolt-on",
            FormField.ROD, "two-way",
            FormField.BRIDGE, "floating",
            FormField.PICKUP, "bare-neck",
            FormField.HANDED, "left",
            FormField.STRINGS, "a wound set",
            FormField.WINDOW_RELIEF, "0.35..0.45 mm",
            FormField.WINDOW_INTONATION, "-2..2 cents");
  }

  @Test
  void whatNoLongerFitsTheKindIsAskedAgainWhenTheRestIsKept() throws IOException {
    Map<FormField, String> present =
        Map.of(
            FormField.KIND,
            "demo-bass",
            FormField.GAUGES,
            "2.6 2.1 1.6 1.1 mm",
            FormField.NECK,
            "set");
    Entry entry = entry(present, "demo-five", "done", "", "none");
    assertThat(entry.printed())
        .isEqualTo(
            HEAD
                + """
                Kind [demo-bass] > demo-five
                Taken: demo-five.
                2 of 21. How hard the player plays: light, medium, hard.
                Player [asked each time] > done
                6 of 21. String diameters in the same order, such as .105 .085 .065 .045 in.
                Gauges [2.6 2.1 1.6 1.1 mm] >
                Not taken: demo-five has 5 strings; give as many gauges, not 4.
                Gauges [2.6 2.1 1.6 1.1 mm] > none
                Taken: none.\
                """);
    assertThat(entry.answers().fields())
        .containsExactly(FormField.KIND, "demo-five", FormField.NECK, "set");
  }

  @Test
  void leavingAndTheEndOfTheInputAreToldApart() throws IOException {
    Map<FormField, String> present = Map.of(FormField.KIND, "demo-bass");
    assertThat(entry(present, "", "quit").answers().end()).isEqualTo(Dialogue.End.LEFT);
    assertThat(entry(present, "", "hard").answers().end()).isEqualTo(Dialogue.End.CUT_SHORT);
    assertThat(entry(present, "done").answers())
        .isEqualTo(new Answers(present, Dialogue.End.ANSWERED));
  }

  @Test
  void doneIsNoKind() throws IOException {
    assertThat(entry(Map.of(), "done", "quit").printed())
        .isEqualTo(
            HEAD
                + """
                Kind [not known] > done
                Not taken: choose one of demo-bass, demo-five.
                Kind [not known] > quit
                Left without a change.\
                """);
  }
}
