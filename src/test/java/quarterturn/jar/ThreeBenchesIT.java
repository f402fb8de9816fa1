package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterLog;

/**
 * A whole lesson in the real jar: three benches and a desk on one folder, one of the benches killed
 * on the way. The necks are invented.
 */
class ThreeBenchesIT {
  private static final String SEEN = "What the gauges show";
  private static final Map<String, String> NECKS =
      Map.of("left", "too-much", "middle", "right", "right", "back-bow");

  @TempDir Path folder;
  private final Map<String, JarProcess> benches = new LinkedHashMap<>();

  private Path lesson() {
    return folder.resolve("lesson");
  }

  private JarProcess bench(String name) {
    return requireNonNull(benches.get(name));
  }

  private void join(String name) throws Exception {
    benches.put(
        name,
        JarProcess.start(
            List.of(
                "lesson",
                "join",
                lesson().toString(),
                "--plain",
                "--bench=" + name,
                "--as=" + name + "-student")));
  }

  private static void send(JarProcess jar, String after, String line) throws Exception {
    jar.lineWith(after);
    jar.send(line);
  }

  /** Reads up to a line and fails where a reading is shown before it. */
  private static void unseenUpTo(JarProcess jar, String text) throws Exception {
    String line = jar.line();
    while (!line.contains(text)) {
      assertThat(line).doesNotContain(SEEN);
      line = jar.line();
    }
  }

  private void toThePrediction(JarProcess jar) throws Exception {
    send(jar, "Press Enter when it is done.", "");
    send(jar, "Type understood", "u");
    send(jar, "Press Enter when it is done.", "");
    send(jar, "Type wait", "done");
    unseenUpTo(jar, "Predict it before you take it.");
  }

  /** Reads what the leaves show, and says what came of it. */
  private static void readAndReflect(JarProcess jar) throws Exception {
    String seen = jar.lineWith(SEEN);
    jar.send(seen.substring(seen.indexOf(": ", seen.indexOf(SEEN)) + 2).replaceFirst("\\.$", ""));
    jar.lineWith("student 0.4 mm.");
    jar.send("a");
  }

  @Test
  void threeBenchesAndABoardWithOneKilledOnTheWay() throws Exception {
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
    try (JarProcess desk = JarProcess.start(List.of("lesson", "desk", lesson().toString()))) {
      for (String name : List.of("left", "middle", "right")) {
        join(name);
      }
      for (JarProcess jar : benches.values()) {
        toThePrediction(jar);
      }
      bench("right").send("stop the leaf is bent");
      desk.lineWith("the leaf is bent");
      for (String name : List.of("left", "middle")) {
        bench(name).send("0.4 it looks so");
        unseenUpTo(bench(name), "HOLD POINT");
      }
      bench("middle").kill();
      desk.send("release left");
      desk.lineWith("Released left");
      readAndReflect(bench("left"));
      join("middle");
      bench("middle").lineWith("goes on where it was with middle-student");
      unseenUpTo(bench("middle"), "HOLD POINT");
      desk.send("release middle");
      desk.lineWith("Released middle");
      readAndReflect(bench("middle"));
      desk.send("release right");
      desk.lineWith("Released right: the stop");
      bench("right").lineWith("The teacher lets this bench go on.");
      bench("right").send("0.4 it looks so");
      unseenUpTo(bench("right"), "HOLD POINT");
      desk.send("release right");
      readAndReflect(bench("right"));
      for (JarProcess jar : benches.values()) {
        jar.lineWith("A good answer");
      }
      desk.send("end");
      desk.send("yes");
      desk.lineWith("The sheets are in");
      desk.send("quit");
      assertThat(desk.ended().status()).isEqualTo(0);
      for (JarProcess jar : benches.values()) {
        assertThat(jar.end().status()).isEqualTo(0);
      }
    } finally {
      for (JarProcess jar : benches.values()) {
        jar.close();
      }
    }
    String sheet = Files.readString(lesson().resolve("sheets-desk/class.txt"));
    assertThat(sheet).contains("left-student");
    assertThat(sheet).contains("middle-student");
    assertThat(sheet).contains("right-student");
    proven();
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
