package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.jar.Packaged;

/** A bench and a desk of a lesson at two terminals, in the real jar. The neck is invented. */
class LessonScreenIT {
  @TempDir Path folder;

  private PtyScreen lesson(String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of("lesson"));
    command.addAll(List.of(words));
    return PtyScreen.start(80, 24, Map.of(), Packaged.program(command).toArray(String[]::new));
  }

  @Test
  void aBenchPredictsAndTheDeskSeesItAndItsStop() throws Exception {
    String plan = folder.resolve("lesson").toString();
    try (PtyScreen made = lesson("new", plan, "--procedure=relief-check", "--neck=too-much")) {
      assertThat(made.exitStatus()).isEqualTo(0);
    }
    try (PtyScreen desk = lesson("desk", plan);
        PtyScreen bench = lesson("join", plan, "--bench=left", "--as=Ana")) {
      bench.waitFor("Keep it").keys("\r");
      bench.waitFor("Press u").keys("u");
      bench.waitFor("tune every string").keys("\r");
      bench.waitFor("It is over").keys("\r");
      bench.waitFor("Predict first");
      assertThat(bench.text()).doesNotContain("What the gauges show");
      desk.waitFor("Ana");
      // The stop works before the time to think is over.
      bench.keys("\u001b[19~").waitFor("To stop is always right").keys("the leaf is bent\r");
      bench.waitFor("STOPPED");
      desk.waitFor("STOPPED").keys("?");
      desk.waitFor("back").keys("\u001b");
    }
  }
}
