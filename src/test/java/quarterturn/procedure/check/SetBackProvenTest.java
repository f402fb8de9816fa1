package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/** A sheet that sets a lesson back is proven like any other, and one that goes wrong is refused. */
class SetBackProvenTest {
  private static final Path SHEET = Path.of("procedures/set-back.yaml");

  @TempDir Path folder;

  /** The rules that the sheet breaks once a piece of it is another. */
  private List<String> broken(String piece, String other) throws Exception {
    String sheet = Files.readString(SHEET);
    assertThat(sheet).contains(piece);
    Path file = folder.resolve("procedures/set-back.yaml");
    Files.createDirectories(folder.resolve("procedures"));
    Files.writeString(file, sheet.replace(piece, other));
    return Checker.check(new Shelf(folder), "set-back", new Walks()).findings().stream()
        .map(fault -> fault.rule())
        .distinct()
        .toList();
  }

  @Test
  void theSheetAsItStands() throws Exception {
    assertThat(broken("revision: 1", "revision: 2")).isEmpty();
  }

  @Test
  void whatIsLeftIsAskedForBeforeEachTurn() throws Exception {
    String asks = "      - turned last time less than 1/32 turn: set-back\n";
    assertThat(broken("    id: decide\n  - cases:\n" + asks, "    id: decide\n  - cases:\n"))
        .contains("turn-direction");
  }

  @Test
  void theStringsAreSlackWhicheverWayItGoes() throws Exception {
    assertThat(broken("      only if:\n", "      only if: relief above target\n"))
        .contains("turn-detuned");
  }

  @Test
  void aTurnBackIsReadBeforeTheNext() throws Exception {
    String answer = "      - answered: decide\n      - read-anew: retune";
    assertThat(broken(answer, "      - answered: one-turn\n      - read-anew: one-turn"))
        .isNotEmpty();
  }
}
