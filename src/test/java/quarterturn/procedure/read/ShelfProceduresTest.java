package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Fault;

/** What stands on a shelf, and the faults of the files that procedures are held to. */
class ShelfProceduresTest {
  @TempDir Path own;

  private Path put(String place, String text) throws IOException {
    Path file = own.resolve(place);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  @Test
  void thoseThatComeWithTheProgramAreThoseOfTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("procedures"))) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".yaml"))
              .map(name -> name.replace(".yaml", ""))
              .filter(name -> !name.equals("kinds") && !name.equals("results"))
              .sorted()
              .toList();
      assertThat(names).contains("relief");
      assertThat(new Shelf(null).procedures()).containsExactlyElementsIn(names).inOrder();
    }
  }

  @Test
  void theUsersOwnComeFirstAndEachOnce() throws IOException {
    put("procedures/zebra.yaml", "#");
    put("procedures/relief.yaml", "#");
    put("procedures/kinds.yaml", "");
    put("procedures/notes.txt", "");
    put("procedures/No Id.yaml", "");
    List<String> ids = new Shelf(own).procedures();
    assertThat(ids.subList(0, 3)).containsExactly("relief", "zebra", "action").inOrder();
    assertThat(ids).containsNoDuplicates();
    assertThat(ids).hasSize(new Shelf(null).procedures().size() + 1);
  }

  @Test
  void aShelfKnowsWhatItHas() throws IOException {
    assertThat(new Shelf(null).has("relief")).isTrue();
    assertThat(new Shelf(null).has("zebra")).isFalse();
    assertThat(new Shelf(null).has("kinds")).isFalse();
  }

  @Test
  void eachOfTheOtherFilesIsReadByItsOwnReader() throws IOException {
    Shelf shelf = new Shelf(null);
    for (String file : List.of("procedures/kinds", "procedures/results", "safety/hazards")) {
      assertThat(shelf.faults(file + ".yaml")).isEmpty();
    }
    assertThat(shelf.faults("safety/limits.yaml")).isEmpty();
    finds(put("kinds.yaml", "kinds:\n  - kind: x\n"), "scale");
    finds(put("results.yaml", "results: []\nchangs: []\n"), "changs");
    finds(put("hazards.yaml", "hazards: []\n"), "empty");
    String limits = Files.readString(Path.of("safety/limits.yaml"));
    finds(put("limits.yaml", limits.replace("tool-slip", "tool-slop")), "tool-slop");
  }

  private static void finds(Path file, String wrong) throws IOException {
    List<Fault> faults = new Shelf(null).faults(file.toString());
    assertThat(faults.stream().anyMatch(one -> one.toString().contains(wrong))).isTrue();
    assertThat(faults.get(0).mark().file()).isEqualTo(file.toString());
  }
}
