package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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

  static List<String> sheets() throws Exception {
    try (Stream<Path> files = Files.list(Path.of(FOLDER))) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(file -> file.endsWith("-full.yaml"))
          .map(file -> file.replace("-full.yaml", ""))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void theShortFormMeansWhatIsWrittenOut(String name) throws Exception {
    Procedure full = read(name + "-full");
    assertThat(Ways.of(read(name))).isEqualTo(Ways.of(full));
    assertThat(words(read(name))).isEqualTo(words(full));
    String written = Files.readString(Path.of(FOLDER + name + "-full.yaml"));
    assertThat(tree(new Shelf(null).full(FOLDER + name + ".yaml"))).isEqualTo(tree(written));
  }

  @Test
  void everyFormStandsInASheet() throws Exception {
    StringBuilder all = new StringBuilder();
    for (String name : sheets()) {
      all.append(Files.readString(Path.of(FOLDER + name + ".yaml")));
    }
    for (String form :
        List.of(
            "answers:",
            "- not sure",
            "cases:",
            "then:",
            "only if:",
            "unless:",
            "use:",
            "read:",
            "agree:",
            "again:",
            "third:",
            "differ:",
            "cannot:",
            "turn: rod, as advised",
            "turn: rod, taken back",
            "use: may-turn",
            "go on",
            "id:")) {
      assertWithMessage(form).that(all.toString()).contains(form);
    }
  }

  /** A file as a tree in which every value is a text. */
  private static Object tree(String text) throws Exception {
    return texts(new YAMLMapper().readValue(text, Object.class));
  }

  private static Object texts(Object piece) {
    if (piece instanceof Map<?, ?> map) {
      Map<String, Object> all = new HashMap<>();
      map.forEach((key, value) -> all.put(String.valueOf(key), texts(value)));
      return all;
    }
    return piece instanceof List<?> list
        ? list.stream().map(FormsTest::texts).toList()
        : String.valueOf(piece);
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
