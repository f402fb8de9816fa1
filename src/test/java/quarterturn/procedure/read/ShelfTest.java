package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Library;
import quarterturn.procedure.LibraryFilesTest;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.yaml.Source;
import quarterturn.unit.Turn;

class ShelfTest {
  @TempDir Path own;

  @BeforeEach
  void fill() throws IOException {
    put("procedures/kinds.yaml", LibraryFilesTest.KINDS);
    put("safety/hazards.yaml", LibraryFilesTest.HAZARDS);
    put("safety/limits.yaml", limits());
  }

  /** The limits that come with the program, with a hazard of these tests' own. */
  private static String limits() {
    return new String(Readings.bytes("/safety/limits.yaml"), StandardCharsets.UTF_8)
        .replace("turn-hazards: [", "turn-hazards: [key-slips, ");
  }

  private Path put(String place, String text) throws IOException {
    Path file = own.resolve(place);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  /** A procedure that calls others, one after the other. */
  private Path procedure(String place, String id, String... calls) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("procedure: ").append(id).append("\nrevision: 1\ntitle: T\npurpose: P\n");
    text.append("tools: []\nbegin: end\nretune: end\nreread: end\nsteps:\n  - part: All\n");
    for (String call : calls) {
      text.append("  - call: to-").append(call).append("\n    procedure: ").append(call);
      text.append("\n    go: end\n");
    }
    text.append("  - done: end\n    text: End.\n    hazards: [key-slips]\n    outcome: end\n");
    return put(place, text.toString());
  }

  private Library load(String id) throws UnreadableException, IOException {
    return new Shelf(own).load(id);
  }

  private String faults(String id) {
    String said = assertThrows(UnreadableException.class, () -> load(id)).getMessage();
    return String.valueOf(said).replace(own.toString() + "/", "");
  }

  @Test
  void aProcedureWithThoseItCalls() throws Exception {
    procedure("procedures/one.yaml", "one", "two", "three");
    procedure("procedures/two.yaml", "two", "three");
    procedure("procedures/three.yaml", "three");
    procedure("procedures/not-called.yaml", "not-called");
    Library library = load("one");
    assertThat(library.procedures().keySet()).containsExactly("one", "two", "three");
    assertThat(library.kinds().keySet()).containsExactly("invented-bass");
    assertThat(library.hazards().keySet())
        .containsAtLeast("string-break", "key-slips", "tool-slip");
    assertThat(library.limits().perReading()).isEqualTo(Turn.QUARTER);
  }

  @Test
  void theUsersOwnLimitsStandFirst() throws Exception {
    procedure("procedures/one.yaml", "one");
    put("safety/limits.yaml", limits().replace("first-move: 1/8 turn", "first-move: 1/16 turn"));
    assertThat(load("one").limits().firstMove()).isEqualTo(Turn.SIXTEENTH);
  }

  @Test
  void aPathIsReadWhereverItLies() throws Exception {
    procedure("procedures/two.yaml", "two");
    Path file = procedure("elsewhere/draft of mine.yaml", "one", "two");
    assertThat(load(file.toString()).procedures().keySet()).containsExactly("one", "two");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"nothing", "../safety/hazards", "procedures/one", "", "ONE", "kinds", "no.yaml"})
  void whatIsNotThereIsSaid(String id) throws IOException {
    procedure("procedures/one.yaml", "one");
    FileNotFoundException missing = assertThrows(FileNotFoundException.class, () -> load(id));
    assertThat(missing).hasMessageThat().startsWith("there is no ");
    assertThat(missing).hasMessageThat().contains('"' + id + '"');
  }

  @Test
  void aPathThatCannotBe() {
    FileNotFoundException no = assertThrows(FileNotFoundException.class, () -> load("\0.yaml"));
    assertThat(no).hasMessageThat().isEqualTo("\"\uFFFD.yaml\" is no path of a file");
  }

  @Test
  void aMissingProcedureIsAFaultAtEachCall() throws IOException {
    procedure("procedures/one.yaml", "one", "two", "gone");
    procedure("procedures/two.yaml", "two", "gone");
    String faults = faults("one");
    assertThat(faults)
        .contains("procedures/one.yaml:15:16: unknown-id: there is no procedure \"gone\"");
    assertThat(faults)
        .contains("procedures/two.yaml:12:16: unknown-id: there is no procedure \"gone\"");
    assertThat(faults)
        .contains("\n    procedure: gone\n               ^\n  Check its name. It was looked");
  }

  @Test
  void proceduresThatCallEachOtherAreRefused() throws IOException {
    procedure("procedures/one.yaml", "one", "two");
    procedure("procedures/two.yaml", "two", "three");
    procedure("procedures/three.yaml", "three", "two");
    assertThat(faults("one"))
        .isEqualTo(
            """
            procedures/three.yaml:12:16: call-circle: procedures that call each other never end: two, which calls three, which calls two
                procedure: two
                           ^
              Take one of these calls out\
            """);
  }

  @Test
  void aProcedureThatCallsItselfIsRefused() throws IOException {
    procedure("procedures/one.yaml", "one", "one");
    assertThat(faults("one"))
        .contains("one.yaml:12:16: call-circle: procedures that call each other never end");
  }

  @Test
  void aFileMustHoldWhatItsNameSays() throws IOException {
    procedure("procedures/one.yaml", "one", "two");
    procedure("procedures/two.yaml", "three");
    assertThat(faults("one"))
        .isEqualTo(
            """
            procedures/two.yaml:1:12: bad-id: the file of the procedure "two" calls itself another
            procedure: three
                       ^
              Write procedure: two, or give the file the name of its procedure\
            """);
  }

  @Test
  void faultsOfAllFilesAreToldTogether() throws IOException {
    procedure("procedures/one.yaml", "one", "two", "three");
    put("procedures/two.yaml", "procedure: [");
    put("procedures/three.yaml", "procedure: three\n");
    put("procedures/kinds.yaml", "kinds: []\n");
    put("safety/hazards.yaml", "hazards: {}\n");
    put("safety/limits.yaml", "limits:\n  per-reading: 1 turn\n");
    String faults = faults("one");
    assertThat(faults).contains("procedures/two.yaml:1:");
    assertThat(faults)
        .contains("procedures/three.yaml:1:1: missing-key: a procedure lacks the keys");
    assertThat(faults).contains("procedures/kinds.yaml:1:8: bad-value: the list of kinds is empty");
    assertThat(faults).contains("safety/hazards.yaml:1:10: bad-value: expected a list here");
    assertThat(faults).contains("safety/limits.yaml:2:16: over-limit: 1 turn is too much");
  }

  @Test
  void hazardsThatCannotBeReadAreNotCalledUnknown() throws IOException {
    procedure("procedures/one.yaml", "one");
    put("safety/hazards.yaml", "hazards: [");
    assertThat(faults("one")).doesNotContain("key-slips");
  }

  @Test
  void anUnknownHazardIsAFault() throws IOException {
    procedure("procedures/one.yaml", "one");
    put("safety/hazards.yaml", LibraryFilesTest.HAZARDS.replace("key-slips", "key-slip"));
    assertThat(faults("one")).contains("unknown-word: \"key-slips\" is not a known hazard");
  }

  @Test
  void aFileTooLargeIsRefused() throws IOException {
    put("procedures/one.yaml", "#".repeat(Source.MOST_BYTES + 10));
    assertThat(faults("one"))
        .contains("procedures/one.yaml:1:1: not-yaml: this file has more than");
  }

  @ParameterizedTest
  @CsvSource({
    "procedures/blocks/find-rod.yaml, a block",
    "safety/turn.yaml, a block",
    "safety/endings.yaml, shared ends",
    "procedures/lesson/relief.yaml, questions of a lesson",
  })
  void aFileThatProceduresTakeFromIsCheckedWithThem(String file, String what) throws IOException {
    String faults = faults(file);
    assertThat(faults).contains("unknown-key: this file is " + what + ", not a procedure\n");
    assertThat(faults)
        .endsWith("It is checked with the procedures that use it; check one of those");
    assertThat(faults.split(file)).hasLength(2);
  }

  /** The steps that it would have had are not missed one by one. */
  @Test
  void aBlockThatIsNoYamlIsOneFault() throws Exception {
    put("procedures/blocks/torn.yaml", "block: torn\nsteps:\n  - tell: a\n    text: One: two\n");
    put(
        "procedures/uses.yaml",
        "procedure: uses\nrevision: 1\ntitle: T\npurpose: P\ntools: []\nretune: a\nsteps:\n"
            + "  - part: All\n  - use: torn\n  - tell: b\n    text: T.\n    go: a\n");
    UnreadableException e = assertThrows(UnreadableException.class, () -> load("uses"));
    assertThat(e.faults()).hasSize(1);
    assertThat(e).hasMessageThat().contains("a colon that cannot stand here");
  }
}
