package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The front end that src/docs/json-lines.md prints runs as it stands there, on the jar. */
class FrontEndIT {
  @TempDir Path folder;
  private Path source = Path.of("unset");

  @BeforeEach
  void asItStandsInThePage() throws Exception {
    String page = Files.readString(Path.of("src/docs/json-lines.md"));
    source = folder.resolve("Example.java");
    Files.writeString(source, page.split("```java\n", -1)[1].split("```\n", -1)[0]);
  }

  private String data() {
    return folder.resolve("data").toString();
  }

  private void quarterturn(String in, String... args) throws Exception {
    String[] all = java.util.Arrays.copyOf(args, args.length + 2);
    all[args.length] = "--data";
    all[args.length + 1] = data();
    JarProcess.Ran ran = JarProcess.run(in, all);
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(0);
  }

  private String example(String typed) throws Exception {
    String jar = Objects.requireNonNull(System.getProperty("quarterturn.jar"));
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Path in = Files.writeString(folder.resolve("typed"), typed);
    Path out = folder.resolve("said");
    Process run =
        new ProcessBuilder(List.of(java, "-cp", jar, source.toString(), "--data", data()))
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertThat(run.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(run.exitValue()).isEqualTo(0);
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  @Test
  void itListsTheOpenSessionsAndGoesOnWithTheFirst() throws Exception {
    assertWithMessage("where nothing is open").that(example("")).isEmpty();
    quarterturn("", "instrument", "add", "blue", "--kind", "bass-34", "--ticket", "4711");
    quarterturn("{\"answer\":\"quit\"}\n", "start", "relief", "--instrument", "blue", "--lines");
    List<String> said = example("\n{\"answer\":\"medium\"}\n").lines().toList();
    assertThat(said.get(0))
        .isEqualTo("blue, 4711: strings as found, rod not turned, relief not yet read");
    assertThat(said.get(1)).startsWith("tell: Welcome back. ");
    assertThat(said.stream().filter(line -> line.startsWith("choose: ")).toList()).hasSize(1);
    assertThat(said.get(said.size() - 1)).startsWith("{\"left\":");
    String page = Files.readString(Path.of("src/docs/json-lines.md"));
    assertThat(page).contains(said.get(0) + "\ntell: Welcome back. ...\n");
  }
}
