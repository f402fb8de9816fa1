package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.kind.Style;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

class InstrumentTest {
  private static final Instant CREATED = Instant.parse("2027-03-01T09:00:00Z");
  private static final String GOOD =
      """
      name: practice-bass
      kind: bass-34
      created: 2027-03-01T09:00:00Z
      """;

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));

  @BeforeEach
  void openStore() {
    store = Store.at(folder.resolve("data"));
  }

  private static Instrument withStrings(String strings) {
    return new Instrument(
        "practice-bass",
        "bass-34",
        Style.MEDIUM,
        17,
        strings,
        CREATED,
        Instrument.Build.UNKNOWN,
        Map.of());
  }

  private Path file() {
    return folder.resolve("data/instruments/practice-bass.yaml");
  }

  private void write(String yaml) throws IOException {
    Files.createDirectories(folder.resolve("data/instruments"));
    Files.writeString(file(), yaml);
  }

  @Test
  void itIsReadableByPeople() throws IOException {
    store.add(withStrings("flat wound, .045 to .105"));
    assertThat(Files.readString(file()))
        .isEqualTo(
            """
            # An instrument known to quarterturn.
            name: "practice-bass"
            kind: "bass-34"
            style: "medium"
            joint-fret: 17
            strings: "flat wound, .045 to .105"
            created: "2027-03-01T09:00:00Z"
            """);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "45",
        "true",
        "null",
        "~",
        "- a",
        "a: b # c",
        "\"q\" 'r'",
        "&a *b",
        "größer",
        " spaces ",
        "",
        "%",
        "@",
        "0x1F",
        "{}",
        "[",
        "a\\nb",
        "very long very long very long very long very long "
            + "very long very long very long very long very long very long"
      })
  void anyNoteComesBackAsItWas(String note) throws IOException {
    store.add(withStrings(note));
    assertThat(store.instrument("practice-bass")).isEqualTo(withStrings(note));
  }

  @Test
  void whatIsNotKnownIsLeftOut() throws IOException {
    Instrument bare =
        new Instrument(
            "Practice-Bass",
            "bass-34",
            null,
            null,
            null,
            CREATED,
            Instrument.Build.UNKNOWN,
            Map.of());
    store.add(bare);
    assertThat(Files.readString(file())).doesNotContain("null");
    assertThat(store.instrument("PRACTICE-bass")).isEqualTo(bare);
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    store.add(withStrings("first"));
    IOException e = assertThrows(IOException.class, () -> store.add(withStrings("second")));
    assertThat(e).hasMessageThat().contains("practice-bass already; choose another name");
    assertThat(store.instrument("practice-bass").strings()).isEqualTo("first");
    try (var all = Files.list(file().getParent())) {
      assertThat(all.toList()).containsExactly(file());
    }
  }

  @Test
  void aHandWrittenFileIsRead() throws IOException {
    write(GOOD + "style: light\n");
    assertThat(store.instrument("practice-bass"))
        .isEqualTo(
            new Instrument(
                "practice-bass",
                "bass-34",
                Style.LIGHT,
                null,
                null,
                CREATED,
                Instrument.Build.UNKNOWN,
                Map.of()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "colour: red|unknown field \"colour\"",
        "style: loud|\"style\" must be a known word, and not \"loud\"",
        "joint-fret: 40|between 1 and 36, not 40",
        "joint-fret: 0|between 1 and 36, not 0",
        "joint-fret: high|\"joint-fret\" must be a whole number",
        "strings: [a]|\"strings\" must be text",
        "kind: bass-34|:4 is no YAML: Duplicate",
        "strings: 'a|is no YAML",
      })
  void aLineThatIsWrongIsNamed(String line, String wanted) throws IOException {
    write(GOOD + line.replace("''", "'") + "\n");
    IOException e = assertThrows(IOException.class, () -> store.instrument("practice-bass"));
    assertThat(e).hasMessageThat().startsWith("practice-bass.yaml");
    assertThat(e).hasMessageThat().contains(wanted);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "name: other|names its instrument other; the two must agree",
        "name: ../up|can't name an instrument",
        "name: 7|\"name\" must be text",
      })
  void aNameThatIsWrongIsNamed(String line, String wanted) throws IOException {
    write(GOOD.replace("name: practice-bass", line));
    IOException e = assertThrows(IOException.class, () -> store.instrument("practice-bass"));
    assertThat(e).hasMessageThat().contains(wanted);
  }

  @Test
  void whatIsNoSingleSmallMappingIsRefused() throws IOException {
    for (String yaml :
        List.of(
            "",
            "# nothing\n",
            "- a\n",
            GOOD + "---\n" + GOOD,
            GOOD + "strings: &a [*a, *a]\n",
            GOOD + "# " + "x".repeat(20_000) + "\n",
            GOOD + "strings: " + "[".repeat(5_000) + "\n")) {
      write(yaml);
      IOException e = assertThrows(IOException.class, () -> store.instrument("practice-bass"));
      assertThat(e).hasMessageThat().startsWith("practice-bass.yaml");
      assertThat(e).hasMessageThat().doesNotContain("\n");
    }
  }

  @Test
  void oneBadFileDoesNotHideTheOthers() throws IOException {
    store.add(withStrings("good"));
    store.add(
        new Instrument(
            "a-first", "bass-34", null, null, null, CREATED, Instrument.Build.UNKNOWN, Map.of()));
    Files.writeString(folder.resolve("data/instruments/bad.yaml"), "name: bad\n");
    Files.writeString(folder.resolve("data/instruments/notes.txt"), "mine\n");
    Store.InstrumentList shelf = store.instruments();
    assertThat(shelf.instruments().stream().map(Instrument::name).toList())
        .containsExactly("a-first", "practice-bass")
        .inOrder();
    assertThat(shelf.notices())
        .containsExactly(
            "not read: bad.yaml, its field \"kind\" is missing",
            "not read: notes.txt, its name does not end in .yaml");
  }

  @Test
  void oneThatIsNotThereIsNamed() {
    IOException e = assertThrows(IOException.class, () -> store.instrument("ghost"));
    assertThat(e).hasMessageThat().contains("there is no instrument ghost; add it first");
    assertThrows(NotUnderstoodException.class, () -> store.instrument("../ghost"));
  }

  @Test
  void theRecordRefusesWhatItCanNotKeep() {
    assertThrows(NotUnderstoodException.class, () -> withStrings("two\nlines"));
    assertThrows(NotUnderstoodException.class, () -> withStrings("\u001b[31m"));
    assertThrows(NotUnderstoodException.class, () -> withStrings("x".repeat(201)));
  }
}
