package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
    LineSource in = Echoing.of(input, writer);
    InstrumentDialogue dialogue = new InstrumentDialogue("demo", present, KINDS);
    Dialogue.End end = DialogueLines.run(dialogue, in, writer);
    Answers answers = new Answers(dialogue.fields(), end);
    String printed =
        out.toString().lines().map(String::stripTrailing).collect(Collectors.joining("\n"));
    return new Entry(printed, answers);
  }

  private static final String KIND =
      """

      1 of 9. What kind of instrument is it?
      1. Invented (demo-bass)
      2. Invented (demo-five)

      """;

  @Test
  void aNewOneFromFirstToLast() throws IOException {
    Entry entry =
        entry(
            Map.of(),
            "",
            "banjo",
            "Demo-Bass",
            "loud",
            "MEDIUM",
            "",
            ".105 .085",
            ".105 .085 .065 .045",
            "2",
            "",
            "two-way",
            "8",
            "7",
            "bare-nek",
            "4");
    assertThat(entry.printed())
        .isEqualTo(
            KIND
                + """
                Kind >
                Not taken: Type a number from the list, or a name in it; quit leaves.
                Kind > banjo
                Not taken: Type a number from the list, or a name in it; quit leaves.
                Kind > Demo-Bass
                Taken: demo-bass.

                2 of 9. How hard does the player play? It sets the range of the relief.
                1. Asked when work begins (keep)
                2. With a light hand (light)
                3. With a medium hand (medium)
                4. With a hard hand (hard)

                Player [asked when work begins] > loud
                Not taken: Type a number from the list; Enter keeps the first, none clears it,
                done keeps all that is left, quit leaves.
                Player [asked when work begins] > MEDIUM
                Taken: medium.

                3 of 9. Notes of the open strings, lowest first, such as E1 A1 D2 G2.
                Tuning [E1 A1 D2 G2, as usual for its kind] >

                4 of 9. String diameters in the same order, such as .105 .085 .065 .045 in.
                Press Enter where you don't know them.
                Gauges [not known] > .105 .085
                Not taken: demo-bass has 4 strings; give as many gauges, not 2.
                Gauges [not known] > .105 .085 .065 .045
                Taken: 2.667 2.159 1.651 1.143 mm.

                5 of 9. How is the neck joined to the body?
                1. Not known (keep)
                2. Screwed on (bolt-on)
                3. Glued in (set)

                Neck [not known] > 2
                Taken: bolt-on.

                6 of 9. What guides the strings at the headstock end?
                1. As its kind has it (keep)
                2. A nut with a slot for each string (slotted)
                3. A nut that clamps the strings (locking)
                4. A fret before fret 1; the nut only spaces them (zero-fret)

                Nut [as its kind has it] >

                7 of 9. What truss rod does the neck have?
                1. As its kind has it (keep)
                2. One that bends the neck back only (single)
                3. One that bends it either way (two-way)
                4. Two rods side by side (two-rods)
                5. None (none-fitted)

                Rod [as its kind has it] > two-way
                Taken: two-way.

                8 of 9. What can be moved at the bridge?
                1. As its kind has it (keep)
                2. Each saddle, by screws of its own (adjustable)
                3. The whole bridge, on two posts (two-posts)
                4. Saddles that carry two strings each (paired)
                5. Saddles that are held by locks (locked)
                6. Nothing (fixed)
                7. It floats, balanced by springs (floating)

                Bridge [as its kind has it] > 8
                Not taken: Type a number from the list; Enter keeps the first, none clears it,
                done keeps all that is left, quit leaves.
                Bridge [as its kind has it] > 7
                Taken: floating.

                9 of 9. Which magnetic pickup is set?
                1. As its kind has it (keep)
                2. By the neck, under a cover (covered-neck)
                3. By the bridge, under a cover (covered-bridge)
                4. By the neck, with bare rod magnets (bare-neck)
                5. By the bridge, with bare rod magnets (bare-bridge)

                Pickup [as its kind has it] > bare-nek
                Not taken: Did you mean "bare-neck"? Type a number from the list; Enter keeps
                the first, none clears it, done keeps all that is left, quit leaves.
                Pickup [as its kind has it] > 4
                Taken: bare-neck.\
                """
                    .stripTrailing());
    assertThat(entry.answers().end()).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(entry.answers().fields())
        .containsExactly(
            FormField.KIND, "demo-bass",
            FormField.STYLE, "medium",
            FormField.GAUGES, "2.667 2.159 1.651 1.143 mm",
            FormField.NECK, "bolt-on",
            FormField.ROD, "two-way",
            FormField.BRIDGE, "floating",
            FormField.PICKUP, "bare-neck");
  }

  @Test
  void atMostTenQuestionsAreAsked() throws IOException {
    assertThat(InstrumentDialogue.ASKED.size()).isAtMost(10);
    Entry entry = entry(Map.of(), "1", "", "", "", "", "", "", "", "");
    assertThat(entry.answers().end()).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(entry.answers().fields()).containsExactly(FormField.KIND, "demo-bass");
  }

  @Test
  void notToKnowOnesStringsIsAnOrdinaryAnswer() throws IOException {
    for (String unknown : List.of("", "I don't know", "unknown", "-", "none")) {
      Entry entry = entry(Map.of(), "1", "", "", unknown, "done");
      assertThat(entry.answers())
          .isEqualTo(new Answers(Map.of(FormField.KIND, "demo-bass"), Dialogue.End.ANSWERED));
      assertThat(entry.printed()).doesNotContain("Not taken");
    }
  }

  @Test
  void ofAKnownOneOnlyWhatIsChosenIsAsked() throws IOException {
    Map<FormField, String> present =
        Map.of(FormField.KIND, "demo-bass", FormField.NECK, "set", FormField.HANDED, "left");
    Entry entry = entry(present, "window-relief", "0.5..0.3", "0.35..0.45", "handed", "none", "");
    assertThat(entry.printed()).contains("\n1. Keep it so (done)\n2. Kind: demo-bass (kind)\n");
    assertThat(entry.printed()).contains("\n9. Neck: set (neck)\n");
    assertThat(entry.printed())
        .contains(
            """
            Relief range [not known] > 0.5..0.3
            Not taken: the first number of a range must be the smaller one.
            """
                .replace("not known", "none of its own"));
    assertThat(entry.printed()).contains("\n1. As it is: The left hand plucks (keep)\n");
    assertThat(entry.answers())
        .isEqualTo(
            new Answers(
                Map.of(
                    FormField.KIND, "demo-bass",
                    FormField.NECK, "set",
                    FormField.WINDOW_RELIEF, "0.35..0.45 mm"),
                Dialogue.End.ANSWERED));
  }

  @Test
  void whatNoLongerFitsTheKindIsAskedBeforeItIsKept() throws IOException {
    Map<FormField, String> present =
        Map.of(FormField.KIND, "demo-bass", FormField.GAUGES, "2.6 2.1 1.6 1.1 mm");
    Entry entry = entry(present, "kind", "demo-five", "done", "", "none");
    assertThat(entry.printed())
        .endsWith(
            """
            Gauges [2.6 2.1 1.6 1.1 mm] >
            Not taken: demo-five has 5 strings; give as many gauges, not 4.
            Gauges [2.6 2.1 1.6 1.1 mm] > none
            Taken: not known.\
            """);
    assertThat(entry.answers())
        .isEqualTo(new Answers(Map.of(FormField.KIND, "demo-five"), Dialogue.End.ANSWERED));
  }

  private static List<String> asked(InstrumentDialogue dialogue) {
    return Objects.requireNonNull(dialogue.question()).lines();
  }

  @Test
  void backGoesToTheQuestionBefore() {
    InstrumentDialogue dialogue = new InstrumentDialogue("demo", Map.of(), KINDS);
    assertThat(dialogue.back()).isFalse();
    dialogue.take("1");
    assertThat(dialogue.back()).isTrue();
    assertThat(asked(dialogue)).containsExactly("1 of 9. What kind of instrument is it?");
    InstrumentDialogue known =
        new InstrumentDialogue("demo", Map.of(FormField.KIND, "demo-bass"), KINDS);
    known.take("scale");
    assertThat(known.back()).isTrue();
    assertThat(asked(known)).containsExactly("What is known of it:");
    assertThat(known.back()).isFalse();
  }

  @Test
  void leavingAndTheEndOfTheInputAreToldApart() throws IOException {
    Map<FormField, String> present = Map.of(FormField.KIND, "demo-bass");
    assertThat(entry(present, "quit").answers().end()).isEqualTo(Dialogue.End.LEFT);
    assertThat(entry(present, "style", "hard").answers().end()).isEqualTo(Dialogue.End.CUT_SHORT);
    assertThat(entry(present, "done").answers())
        .isEqualTo(new Answers(present, Dialogue.End.ANSWERED));
  }

  @Test
  void doneIsNoKind() throws IOException {
    assertThat(entry(Map.of(), "done", "quit").printed())
        .isEqualTo(
            KIND
                + """
                Kind > done
                Not taken: Type a number from the list, or a name in it; quit leaves.
                Kind > quit
                Left without a change.\
                """);
  }
}
