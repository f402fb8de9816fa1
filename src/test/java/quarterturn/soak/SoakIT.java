package quarterturn.soak;

import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Random play for as long as is wanted, with the profile {@code soak}. */
@Tag("soak")
class SoakIT {
  @Test
  void randomPlayEndsWithoutAFinding() throws Exception {
    String seed = System.getProperty("soak.seed", "1");
    double minutes = Double.parseDouble(System.getProperty("soak.minutes", "30"));
    Path work = Files.createDirectories(Path.of("target", "soak", "seed-" + seed));
    RandomPlay play = RandomPlay.on(Path.of(System.getProperty("quarterturn.jar")), work);
    play.play(Long.parseLong(seed), Duration.ofSeconds(Math.round(60 * minutes)));
    assertWithMessage("findings, kept in %s", work).that(play.findings()).isEqualTo(0);
  }
}
