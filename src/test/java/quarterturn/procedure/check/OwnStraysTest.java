package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.read.Shelf;
import quarterturn.procedure.read.Stray;

/** What is no procedure in the folder of one's own is told of, and stops nothing else. */
class OwnStraysTest {
  @TempDir Path own;

  @BeforeEach
  void write() throws IOException {
    Path procedures = Files.createDirectories(own.resolve("procedures"));
    Files.createDirectories(procedures.resolve("blocks"));
    Files.writeString(procedures.resolve("mine.yaml"), "procedure: mine\n");
  }

  @Test
  void eachIsListedOnceAndTheProceduresAreThere() throws Exception {
    Path mine = own.resolve("procedures/mine.yaml");
    TreeSet<String> expected = new TreeSet<>(Stray.beside(mine, "its name does not end in .yaml"));
    Stray.copies(mine);
    for (String copy : List.of("mine (copy)", "mine.sync-conflict-20270301-120000-ABCDEFG")) {
      expected.add(copy + ".yaml, a procedure's name has small letters, digits and dashes");
    }
    List<String> lines = expected.stream().map("not read: "::concat).toList();
    assertThat(new Shelf(own).notRead()).containsExactlyElementsIn(lines);
    // These are files of procedures by their names, and what is in them is at fault.
    assertThat(new Shelf(own).own()).containsExactly("another", "junk", "link", "mine").inOrder();
    for (List<String> typed : List.of(List.<String>of(), List.of(own.toString()))) {
      assertThat(CheckTarget.notRead(typed, own)).containsExactlyElementsIn(lines);
      assertThat(CheckTarget.of(typed, own).stream().map(CheckTarget::name).toList())
          .containsAtLeast("another", "junk", "link", "mine");
    }
    assertThat(CheckTarget.of(List.of(), own).stream().map(CheckTarget::name).toList())
        .contains("relief");
    assertThat(new Shelf(own).load("relief").main().id()).isEqualTo("relief");
  }

  /** What comes with the program never quietly takes the place of what can't be read. */
  @Test
  void whatStandsInAProceduresPlaceIsAFaultOfThatProcedureAlone() throws Exception {
    Files.createDirectory(own.resolve("procedures/relief.yaml"));
    Shelf shelf = new Shelf(own);
    assertThat(shelf.notRead()).containsExactly("not read: relief.yaml, it is a folder");
    assertThrows(IOException.class, () -> shelf.load("relief"));
    assertThat(shelf.load("strings").main().id()).isEqualTo("strings");
    CheckTarget.of(List.of(own.toString()), null);
  }
}
