package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;

/**
 * A bench of a lesson in the real jar, on a pipe, killed and joined again. The neck is invented.
 */
class LessonIT {
  private static final String SEEN = "What the gauges show";

  @TempDir Path folder;
  private Path lesson = Path.of("");

  @BeforeEach
  void lesson() {
    lesson = folder.resolve("lesson");
  }

  private JarProcess join() throws Exception {
    return JarProcess.start(
        List.of("lesson", "join", lesson.toString(), "--plain", "--bench", "left", "--as", "Ana"));
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

  private WriterLog left() throws Exception {
    return LessonFolder.read(lesson).logs().stream()
        .filter(log -> requireNonNull(log.header()).writer().equals("left"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBenchIsKilledAndNothingIsLostOrSeenEarly() throws Exception {
    JarProcess.Ran made =
        JarProcess.inside(
            "",
            List.of(
                    "lesson",
                    "new",
                    lesson.toString(),
                    "--procedure",
                    "relief-check",
                    "--hold",
                    "none")
                .toArray(String[]::new));
    assertThat(made.err()).isEmpty();
    assertThat(made.status()).isEqualTo(0);
    String reading;
    try (JarProcess jar = join()) {
      send(jar, "Press Enter when it is done.", "");
      send(jar, "Type understood", "u");
      send(jar, "Press Enter when it is done.", "");
      send(jar, "Type done to go on", "done");
      unseenUpTo(jar, "Predict it before you take it.");
      jar.send("0.6 it looks like a card");
      unseenUpTo(jar, "Ana: locked.");
      reading = jar.lineWith(SEEN);
      jar.kill();
    }
    try (JarProcess jar = join()) {
      // What is locked stays locked, and the neck is the same one.
      assertThat(jar.lineWith("Note: " + SEEN)).isEqualTo(reading);
      send(jar, "Type the reading", "0.70 passes 0.75 lifts");
      jar.lineWith("Taken: 0.70 to 0.75 mm");
      jar.kill();
    }
    try (JarProcess jar = join()) {
      jar.lineWith("Predicted: Ana 0.6 mm.");
      jar.lineWith("It read: 0.70 to 0.75 mm.");
      jar.lineWith("Now another case");
      jar.send("tighten");
      jar.lineWith("Not taken: \"tighten\" is no answer here. The letter, a to b.");
      jar.send("b");
      jar.lineWith("Ana: taken.");
      jar.lineWith("A good answer");
      // The other string only repeats the gap, so it is read at once.
      jar.lineWith(SEEN);
      jar.send("stop the leaf is bent");
      unseenUpTo(jar, "STOPPED: the leaf is bent.");
      jar.kill();
    }
    try (JarProcess jar = join()) {
      jar.lineWith("STOPPED: the leaf is bent.");
      release();
      jar.lineWith(SEEN);
      jar.send("quit");
      JarProcess.Ran ran = jar.end();
      assertThat(ran.status()).isEqualTo(0);
      assertThat(ran.out()).contains("Go on later with:\njava -jar ");
    }
    proven();
  }

  /** A teacher whose clock is ten minutes behind. */
  private void release() throws Exception {
    WriterLog log = left();
    String id = requireNonNull(log.header()).lesson();
    Keep stop = BenchLesson.of("left", Level.WORKED, log.events()).keptBy().get(0);
    WriterLog.Header header = new WriterLog.Header(id, "desk", WriterLog.Part.BOARD);
    try (WriterFile desk = WriterFile.create(lesson, header)) {
      Order order = new Order.Release(stop.ref(), stop.value());
      desk.append(List.of(new LessonEvent.Ordered(Instant.now().minusSeconds(600), "left", order)));
    }
  }

  /** The file's order alone proves that each reading came after its prediction. */
  private void proven() throws Exception {
    WriterLog log = left();
    assertThat(log.notice()).isNull();
    assertThat(LessonProof.of(log, LessonFolder.read(lesson).logs())).isEmpty();
    List<String> kinds =
        log.events().stream()
            .map(event -> event.getClass().getSimpleName())
            .filter(kind -> kind.matches("Predicted|Shown|Resulted|Reflected|Stopped|Accepted"))
            .toList();
    assertThat(kinds)
        .containsExactly(
            "Predicted", "Shown", "Resulted", "Reflected", "Shown", "Stopped", "Accepted")
        .inOrder();
    try (Stream<Path> all = Files.list(lesson.resolve("left/sessions"))) {
      assertThat(all.filter(file -> file.toString().endsWith(".jsonl")).count()).isEqualTo(1);
    }
  }
}
