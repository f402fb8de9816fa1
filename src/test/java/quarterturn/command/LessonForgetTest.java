package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.journal.JournalLock;

/** A student's name is struck from a finished lesson; what was done still hangs together. */
@Isolated
class LessonForgetTest {
  private static final Clock AFTER =
      Clock.fixed(InventedLesson.NOW.plus(Duration.ofHours(1)), ZoneOffset.UTC);

  @TempDir Path folder;

  @BeforeEach
  void lesson() throws Exception {
    InventedLesson.write(folder);
    try (WriterFile red = WriterFile.open(folder, "red")) {
      red.append(List.of(new LessonEvent.Stopped(InventedLesson.NOW, "ben, Benno and the bench")));
    }
  }

  private Captured run(String in, String... args) {
    return Captured.of(AFTER, in, args);
  }

  private void end() {
    assertThat(run("end\nyes\nsheets\n", "lesson", "desk", folder.toString(), "--plain").status())
        .isEqualTo(0);
  }

  private Captured forget(String answer, String student) {
    return run(answer + "\n", "lesson", "forget", folder.toString(), student);
  }

  /** Files that hold a word, by their names. */
  private List<String> holding(String word) throws IOException {
    List<String> out = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        if (text.matches("(?is).*\\b" + word + "\\b.*")) {
          out.add(folder.relativize(file).toString());
        }
      }
    }
    return out;
  }

  private List<WriterLog> proven() throws IOException {
    LessonFolder.Contents contents = LessonFolder.read(folder);
    assertThat(contents.notices()).isEmpty();
    assertThat(contents.logs()).hasSize(4);
    for (WriterLog log : contents.logs()) {
      if (log.header() != null && log.header().role() == WriterLog.Part.BENCH) {
        assertWithMessage(log.header().writer())
            .that(LessonProof.of(log, contents.logs()))
            .isEmpty();
      }
    }
    return contents.logs();
  }

  @Test
  void aNumberStandsInThePlaceOfAName() throws Exception {
    end();
    List<WriterLog> before = proven();
    assertThat(holding("ben"))
        .containsAtLeast(
            "red.jsonl", "desk.jsonl", "sheets-desk/02-ben.txt", "sheets-desk/class.html");
    Captured struck = forget("yes", "Ben");
    assertThat(struck.out()).contains("Ben is struck from 2 files; student 6 stands in its place.");
    assertThat(holding("ben")).isEmpty();
    List<WriterLog> after = proven();
    assertThat(after.get(3).events().size()).isEqualTo(before.get(3).events().size() + 1);
    assertThat(after.get(3).all(LessonEvent.Stopped.class).map(LessonEvent.Stopped::reason))
        .containsExactly("student 6, Benno and the bench");
    assertThat(after.get(3).all(LessonEvent.Struck.class).map(LessonEvent.Struck::student))
        .containsExactly("student 6");
    assertThat(holding("student 6")).contains("sheets-desk/06-student-6.txt");
  }

  @Test
  void eachKeepsTheNumberOfItsOwn() throws Exception {
    end();
    assertThat(forget("yes", "Ana").out()).contains("student 5");
    assertThat(forget("yes", "Cleo").out()).contains("student 1");
    assertThat(forget("yes", "Ben").out()).contains("student 6");
    proven();
    assertThat(forget("yes", "student 5").err())
        .contains("nobody has that name here; there are Dov, Eda, Fin");
  }

  @Test
  void aNoChangesNothing() throws Exception {
    end();
    assertThat(forget("no", "Ben").out()).contains("The name stays.");
    assertThat(holding("ben")).isNotEmpty();
    assertThat(holding("student 6")).isEmpty();
  }

  @Test
  void aLessonThatGoesOnIsRefused() {
    Captured refused = forget("yes", "Ben");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("the lesson is not finished; end it at the desk first");
  }

  @Test
  void aFileThatIsOpenOrDamagedIsRefusedAndNothingIsStruck() throws Exception {
    end();
    try (JournalLock lock = JournalLock.take(folder.resolve("red.jsonl"))) {
      assertThat(forget("yes", "Ben").err()).contains("red is open in another window");
    }
    Path blue = folder.resolve("blue.jsonl");
    Files.writeString(blue, Files.readString(blue).replace("It creaked", "It cracked"));
    assertThat(forget("yes", "Ben").err()).contains("blue.jsonl is damaged");
    assertThat(holding("ben")).contains("red.jsonl");
  }

  @Test
  void aStrayWithoutTheNameStopsNothing() throws Exception {
    end();
    Files.writeString(folder.resolve("junk.jsonl"), "no lesson's\n");
    assertThat(forget("yes", "Ben").err()).doesNotContain("junk");
    assertThat(holding("ben")).isEmpty();
    Files.writeString(folder.resolve("more.jsonl"), "Ana was here\n");
    assertThat(forget("yes", "Ana").err()).contains("more.jsonl is damaged");
  }
}
