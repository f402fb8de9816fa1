package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterLog;
import quarterturn.screen.PtyScreen;

/**
 * A whole lesson in the real jar: a bench on the full screen, a typed one at a terminal, which is
 * killed on the way, and a late one on a pipe; the desk at a fourth terminal. The necks are
 * invented.
 */
class ThreeBenchesIT {
  private static final String SEEN = "What the gauges show";
  private static final Pattern LEAVES = Pattern.compile("\\d\\.\\d+ passes, \\d\\.\\d+ lifts");
  private static final Map<String, String> NECKS =
      Map.of("left", "too-much", "middle", "right", "right", "back-bow");

  @TempDir Path folder;

  private Path lesson() {
    return folder.resolve("lesson");
  }

  private List<String> joining(String bench) {
    String as = "--as=" + bench + "-student";
    return List.of("lesson", "join", lesson().toString(), "--bench=" + bench, as);
  }

  private static PtyScreen atTerminal(List<String> command, String... more) throws Exception {
    List<String> all = new ArrayList<>(command);
    all.addAll(List.of(more));
    return PtyScreen.start(80, 24, Map.of(), Packaged.program(all).toArray(String[]::new));
  }

  /** Answers all up to the first prediction on the full screen. */
  private static void onScreen(PtyScreen bench) throws Exception {
    bench.waitFor("Keep it").keys("\r");
    bench.waitFor("Press u").keys("u");
    bench.waitFor("tune every string").keys("\r");
    bench.waitFor("It is over").keys("\r");
    bench.waitFor("Predict first");
    assertThat(bench.text()).doesNotContain(SEEN);
  }

  /** The same in typed lines at a terminal. */
  private static void typed(PtyScreen bench) throws Exception {
    bench.waitFor("Press Enter when it is done").keys("\r");
    bench.waitFor("Type understood").keys("u\r");
    bench.waitFor("tune every string").keys("\r");
    bench.waitFor("Type done to go on").keys("done\r");
    bench.waitFor("Predict it before");
  }

  /** The same on a pipe. */
  private static void piped(JarProcess bench) throws Exception {
    for (String line : List.of("", "u", "", "done", "0.4 it looks so")) {
      bench.send(line);
    }
    String line = bench.line();
    while (!line.contains("HOLD POINT")) {
      assertThat(line).doesNotContain(SEEN);
      line = bench.line();
    }
  }

  /** Gives what the leaves show. */
  private static void read(PtyScreen bench, String shown) throws Exception {
    Matcher leaves = LEAVES.matcher(shown);
    assertThat(leaves.find()).isTrue();
    bench.keys(leaves.group() + "\r");
  }

  /** Lets the first bench of the list go on, which waits for the teacher. */
  private static void release(PtyScreen desk, String bench) throws Exception {
    desk.waitFor(bench + "-student").waitFor("HOLD POINT").keys("1r");
    desk.waitFor(bench + ": Let it go on").keys("\r").waitFor("Released " + bench);
    desk.waitUntilGone("HOLD POINT");
  }

  @Test
  void threeBenchesOfWhichOneIsKilledAndOneIsLate() throws Exception {
    JarProcess.Ran made =
        JarProcess.inside(
            "",
            "lesson",
            "new",
            lesson().toString(),
            "--procedure=relief-check",
            "--hold=low",
            "--neck=left=" + NECKS.get("left"),
            "--neck=middle=" + NECKS.get("middle"),
            "--neck=right=" + NECKS.get("right"));
    assertThat(made.status()).isEqualTo(0);
    try (PtyScreen desk = atTerminal(List.of("lesson", "desk", lesson().toString()));
        PtyScreen left = atTerminal(joining("left"));
        PtyScreen middle = atTerminal(joining("middle"), "--plain")) {
      typed(middle);
      onScreen(left);
      middle.waitFor("The gap in mm").keys("0.4 it lo").waitFor("0.4 it lo");
      middle.signal("KILL", middle.handle());
      left.keys("0.4 it looks so");
      try (JarProcess right = JarProcess.start(with(joining("right"), "--plain"));
          PtyScreen again = atTerminal(joining("middle"), "--plain")) {
        again.waitFor("The gap in mm").keys("0.4 it looks so\r").waitFor("HOLD POINT");
        assertThat(again.text()).doesNotContain(SEEN);
        release(desk, "middle");
        read(again, again.waitFor(SEEN).waitFor("Type the reading").text());
        again.waitFor("It read:");
        left.keys("\r").waitFor("HOLD POINT");
        release(desk, "left");
        read(left, left.waitFor(SEEN).text());
        left.waitFor("It read:");
        piped(right);
        desk.waitFor("right-student").keys("eyes\r");
        left.waitFor("has ended the lesson").keys("\r");
        desk.waitFor("The sheets are in").keys("q");
        assertThat(right.ended().status()).isEqualTo(0);
        assertThat(again.exitStatus()).isEqualTo(0);
        assertThat(left.exitStatus()).isEqualTo(0);
        assertThat(desk.exitStatus()).isEqualTo(0);
      }
    }
    String sheet = Files.readString(lesson().resolve("sheets-desk/class.txt"));
    assertThat(sheet).contains("left-student");
    assertThat(sheet).contains("middle-student");
    assertThat(sheet).contains("right-student");
    proven();
  }

  private static List<String> with(List<String> command, String more) {
    return Stream.concat(command.stream(), Stream.of(more)).toList();
  }

  /** The order of each bench's file alone proves that each reading came after its prediction. */
  private void proven() throws Exception {
    List<WriterLog> logs = LessonFolder.read(lesson()).logs();
    int proven = 0;
    for (WriterLog log : logs) {
      assertThat(log.notice()).isNull();
      if (NECKS.containsKey(requireNonNull(log.header()).writer())) {
        assertThat(LessonProof.of(log, logs)).isEmpty();
        proven++;
      }
    }
    assertThat(proven).isEqualTo(3);
  }
}
