package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;
import quarterturn.procedure.read.MutatedFiles;

/** Ten thousand mutated files neither crash the checker nor hold it up, in 256 MiB. */
@Tag("slow")
class MutatedFilesTest {
  private static final int COUNT = Draws.of(10_000);
  private static final int SEED = 20_262;
  private static final int LONGEST_MS = 1000;

  @Test
  void noneCrashesOrTakesLongOrMuch() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-XX:+ExitOnOutOfMemoryError",
                "-cp",
                System.getProperty(
                        "surefire.test.class.path", System.getProperty("java.class.path"))
                    .replace(':', File.pathSeparatorChar),
                MutatedFiles.class.getName(),
                "procedures",
                String.valueOf(COUNT),
                String.valueOf(SEED))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
    assertWithMessage(said).that(process.exitValue()).isEqualTo(0);
    List<Integer> counts =
        List.of(said.strip().split(" ", -1)).stream().map(Integer::valueOf).toList();
    assertThat(counts.get(0)).isGreaterThan(COUNT / 20);
    assertThat(counts.get(1)).isGreaterThan(COUNT / 100);
    assertThat(counts.get(3)).isAtMost(LONGEST_MS);
  }
}
