package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Results;
import quarterturn.procedure.ShippedRules;

/** Procedures of one's own, as they are offered. */
class OwnProcedureTest {
  private static final Results RESULTS = ShippedRules.ALL.results();

  @TempDir Path own;

  private void write(String name, String text) throws IOException {
    Path file = own.resolve("procedures").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @Test
  void eachHasItsTitleOrItsFirstFault() throws IOException {
    String season = Files.readString(Path.of("procedures/season.yaml"));
    write("my-season.yaml", season.replace("procedure: season", "procedure: my-season"));
    write("torn.yaml", "procedure: torn\nstepz: []\n");
    write("Upper Case.yaml", season); // told of where strays are
    assertThat(OwnProcedure.in(own, RESULTS).stream().map(OwnProcedure::title).toList())
        .containsExactly("Season check", "torn");
    assertThat(OwnProcedure.in(own, RESULTS).get(0).fault()).isEmpty();
    assertThat(OwnProcedure.in(own, RESULTS).get(1).fault())
        .contains("torn.yaml:1:1: a procedure lacks");
  }

  /** Blocks, rules, and what is offered under the program's own name. */
  @Test
  void whatIsOfferedAlreadyOrIsNoProcedureIsLeftOut() throws IOException {
    for (String name :
        new String[] {
          "relief.yaml", "season.yaml", "kinds.yaml", "results.yaml", "blocks/b.yaml", "note.txt"
        }) {
      write(name, "");
    }
    String nut = Files.readString(Path.of("procedures/nut-clearance.yaml"));
    write("nut-clearance.yaml", nut);
    write("my-nut.yaml", nut.replace("procedure: nut-clearance", "procedure: my-nut"));
    assertThat(OwnProcedure.in(own, RESULTS).stream().map(OwnProcedure::id).toList())
        .containsExactly("my-nut");
    assertThat(OwnProcedure.in(null, RESULTS)).isEmpty();
  }
}
