package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.jar.Packaged;

/**
 * A technician's relief check at a terminal, in both faces of the real jar. The neck is invented.
 */
class TechnicianIT {
  private static final String READINGS = "relief .30..0.35 low .35..0.40 high\r";

  @TempDir Path data;

  private PtyScreen check(String... face) throws Exception {
    List<String> words = new ArrayList<>(List.of("rehearse", "relief-check", "--neck=right"));
    words.addAll(List.of("--role=technician", "--data=" + data));
    words.addAll(List.of(face));
    return PtyScreen.start(80, 24, Map.of(), Packaged.program(words).toArray(String[]::new));
  }

  @Test
  void onTheScreenALineByName() throws Exception {
    try (PtyScreen screen = check()) {
      screen.waitFor("u understood").keys("u");
      screen.waitFor("Relief on E1").waitFor("F7 by name").keys("\u001b[18~");
      screen.waitFor("wanted here: relief E1").keys("reli\t.30 lwo\r");
      screen.waitFor("\"lwo\"").keys("\u0015" + READINGS);
      screen.waitFor("DONE  in range").keys("\r");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
  }

  @Test
  void inTypedLinesWithCompletionAndHistory() throws Exception {
    try (PtyScreen screen = check("--plain")) {
      screen.waitFor("understood> ").keys("u\r");
      screen.waitFor("relief E1> ").keys("reli\t.30 lwo\r");
      screen.waitFor("^").keys("\u001b[A");
      screen.waitFor("relief E1> relief .30 lwo").keys("\u0015why\r");
      screen.waitFor("Held at both ends").keys("next\r");
      screen.waitFor("Next: high").keys(READINGS);
      screen.waitFor("Done: in range");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
  }
}
