package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static quarterturn.lesson.Demo.BENCH;
import static quarterturn.lesson.Demo.LESSON;
import static quarterturn.lesson.Demo.T;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.session.journal.DisplacedException;

/** A writer whose file was taken away goes on in a new one, as the same writer. */
class LostWriterFileTest {
  private static final LessonEvent JOINED = new LessonEvent.Joined(T, "By the window");
  private static final LessonEvent CAME = Demo.came("Ana");

  @TempDir Path folder;

  private WriterFile open(String name, WriterLog.Part part) throws IOException {
    return WriterFile.of(folder, LESSON, name, part);
  }

  @Test
  void theSameBenchGoesOnInTheNewFile() throws IOException {
    Path older = folder.resolve("older");
    for (String kept : List.of("-2", "-2-2")) {
      try (WriterFile file = open(BENCH, WriterLog.Part.BENCH)) {
        if (file.found().events().isEmpty()) {
          file.append(List.of(JOINED));
          Files.copy(folder.resolve(BENCH + ".jsonl"), older);
        }
        Path now = folder.resolve(file.file() + ".jsonl");
        Files.delete(now);
        DisplacedException e =
            assertThrows(DisplacedException.class, () -> file.append(List.of(CAME)));
        assertThat(e)
            .hasMessageThat()
            .contains("is now in " + folder.resolve(BENCH + kept + ".jsonl") + ". Go on with the");
      }
    }
    // A sync tool brings the older copy back.
    Files.move(older, folder.resolve(BENCH + ".jsonl"));
    LessonFolder.Contents contents = LessonFolder.read(folder);
    assertThat(contents.notices()).isEmpty();
    assertThat(contents.logs()).hasSize(1);
    assertThat(contents.logs().get(0).events()).containsExactly(JOINED, CAME, CAME).inOrder();
    try (WriterFile file = open(BENCH, WriterLog.Part.BENCH)) {
      assertThat(file.writer()).isEqualTo(BENCH);
      assertThat(file.found().events()).hasSize(3);
    }
  }

  @Test
  void aBoardsOrdersKeepTheirNames() throws IOException {
    LessonEvent order = new LessonEvent.Ordered(T, BENCH, new Order.Hold("Wait."));
    try (WriterFile file = open("desk", WriterLog.Part.BOARD)) {
      file.append(List.of(order));
      Files.delete(folder.resolve("desk.jsonl"));
      assertThrows(DisplacedException.class, () -> file.append(List.of(order)));
    }
    assertThat(WriterLog.orders(BENCH, LessonFolder.read(folder).logs()).keySet())
        .containsExactly(new Ref("desk", 1), new Ref("desk", 2));
  }

  @Test
  void aBenchThatHasSuchANameItselfIsAnother() throws IOException {
    try (WriterFile file = open(BENCH, WriterLog.Part.BENCH)) {
      Files.delete(folder.resolve(BENCH + ".jsonl"));
      assertThrows(DisplacedException.class, () -> file.append(List.of(JOINED)));
    }
    try (WriterFile other = open(BENCH + "-2", WriterLog.Part.BENCH)) {
      assertThat(other.writer()).isNotEqualTo(BENCH);
      assertThat(other.found().events()).isEmpty();
    }
  }
}
