package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;
import quarterturn.procedure.read.Stray;
import quarterturn.unit.NotUnderstoodException;

/** What is none of a lesson's files is told of at its desk and sheets, and stops nothing else. */
class LessonStraysTest {
  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    InventedLesson.write(folder);
  }

  @Test
  void eachIsListedOnceAndTheLessonIsAsItWas() throws Exception {
    List<WriterLog> before = LessonFolder.read(folder).logs();
    TreeSet<String> expected =
        new TreeSet<>(
            Stray.beside(folder.resolve("red.jsonl"), "it is no part of a lesson by its name"));
    Stray.copies(folder.resolve("red.jsonl"));
    for (String copy :
        List.of("red (copy)", "red.sync-conflict-20270301-120000-ABCDEFG", "another", "link")) {
      expected.add(copy + ".jsonl, it is a copy of red's file under another name");
    }
    expected.add("junk.jsonl, it is no whole JSON object");
    Files.createDirectory(folder.resolve("red.sign"));
    expected.add("red.sign, it is a folder");
    Files.copy(folder.resolve("lesson.yaml"), folder.resolve("lesson (copy).yaml"));
    expected.add("lesson (copy).yaml, it is no part of a lesson by its name");
    // What belongs there: a plan of an earlier lesson, sheets, a sign, and a bench's data.
    Files.copy(folder.resolve("lesson.yaml"), folder.resolve("2027-03-01-1-first.yaml"));
    Files.createDirectories(folder.resolve("sheets-desk-2"));
    Files.createDirectories(folder.resolve("red/sessions"));
    Files.writeString(folder.resolve("blue.sign"), "1 2027-03-01T12:00:00Z\n");
    LessonFolder.Contents contents = LessonFolder.read(folder);
    assertThat(contents.notRead())
        .containsExactlyElementsIn(expected.stream().map("not read: "::concat).toList());
    assertThat(contents.notices()).isEmpty();
    assertThat(contents.logs()).isEqualTo(before);
    assertThat(Sign.in(folder).keySet()).containsExactly("blue");
    assertThat(LessonFolder.lengths(folder, "red")).containsKey("blue.jsonl");
  }

  @Test
  void aNameInWhosePlaceAStrayStandsIsRefusedWithTheReason() throws Exception {
    Stray.beside(folder.resolve("red.jsonl"), "");
    for (String name : List.of("folder", "dangling", "loop", "empty")) {
      NotUnderstoodException refused =
          assertThrows(
              NotUnderstoodException.class,
              () -> WriterFile.of(folder, "x", name, WriterLog.Part.BENCH).close());
      assertThat(refused)
          .hasMessageThat()
          .matches(name + "\\.jsonl can't be used: it is .*; choose another name");
    }
    WriterFile.of(folder, "x", "window", WriterLog.Part.BENCH).close();
  }
}
