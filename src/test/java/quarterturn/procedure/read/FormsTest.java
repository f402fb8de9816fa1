package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.Words;

/** Each short form beside the steps that it stands for, written out. */
class FormsTest {
  private static final String FOLDER = "src/test/resources/quarterturn/procedure/forms/";

  @TempDir Path folder;

  private static Procedure read(String name) throws Exception {
    return new Shelf(null).load(FOLDER + name + ".yaml").main();
  }

  @ParameterizedTest
  @ValueSource(strings = {"in-order", "unnamed", "parts"})
  void theShortFormMeansWhatIsWrittenOut(String name) throws Exception {
    Procedure full = read(name + "-full");
    assertThat(Ways.of(read(name))).isEqualTo(Ways.of(full));
    assertThat(words(read(name))).isEqualTo(words(full));
  }

  static List<String> procedures() throws Exception {
    return new Shelf(null).procedures();
  }

  @ParameterizedTest
  @MethodSource("procedures")
  void whatIsPrintedInFullReadsAsTheSameProcedure(String id) throws Exception {
    Procedure procedure = new Shelf(null).load(id).main();
    String text = new Shelf(null).full(id);
    Path file = Files.createDirectories(folder.resolve("procedures")).resolve(id + ".yaml");
    Files.writeString(file, text);
    Procedure again = new Shelf(folder).load(id).main();
    assertThat(Ways.of(again)).isEqualTo(Ways.of(procedure));
    assertThat(words(again)).isEqualTo(words(procedure));
    assertThat(new Shelf(folder).full(id)).isEqualTo(text);
  }

  private static List<Words> words(Procedure procedure) {
    return procedure.steps().values().stream().map(Step::words).toList();
  }
}
