package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whoever saves a file under {@code --watch} should have the answer at once: a process that has
 * checked before checks all shipped procedures within the bound. It is a process of its own, since
 * other tests leave the machine's compiler with other habits; the best round is least disturbed.
 */
@Tag("slow")
class CheckSpeedTest {
  /** Five times what {@code CheckBench} is to show on an idle machine. */
  private static final int BOUND_MS = 1500;

  private static final int ROUNDS = 100;

  @Test
  void allShippedProceduresAreCheckedWithinTheBound() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                CheckRounds.class.getName(),
                String.valueOf(BOUND_MS),
                String.valueOf(ROUNDS))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<String> words = List.of(said.strip().split(" ", -1));
    assertThat(words).hasSize(2);
    assertThat(Integer.parseInt(words.get(0))).isAtLeast(11);
    assertThat(Double.parseDouble(words.get(1))).isLessThan(BOUND_MS);
  }
}
