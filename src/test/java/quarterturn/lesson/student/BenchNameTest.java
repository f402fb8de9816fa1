package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.store.WriterFile;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** A bench's name that another has is asked for again. */
class BenchNameTest {
  @TempDir Path folder;

  private BenchName named(String given, String... students) throws Exception {
    InventedLesson.write(folder);
    return new BenchName(InventedLesson.PLAN, folder, List.of(students), given);
  }

  private static String told(BenchName name) {
    Question question = Objects.requireNonNull(name.question());
    return question.lines().get(0);
  }

  @Test
  void aFreeNameAsksNothing() throws Exception {
    try (BenchName name = named("window", "Ana");
        WriterFile file = Objects.requireNonNull(name.file())) {
      assertThat(file.writer()).isEqualTo("window");
      assertThat(name.name()).isEqualTo("window");
    }
  }

  @Test
  void aBenchGoesOnWithItsOwnStudents() throws Exception {
    try (BenchName name = named("red", "Ana")) {
      assertThat(name.question()).isNull();
    }
  }

  @Test
  void aBenchThatIsOpenElsewhereHasAnotherName() throws Exception {
    InventedLesson.write(folder);
    try (WriterFile elsewhere = WriterFile.open(folder, "red");
        BenchName name = new BenchName(InventedLesson.PLAN, folder, List.of("Ana"), "red")) {
      assertThat(elsewhere.writer()).isEqualTo("red");
      assertThat(told(name)).isEqualTo("Bench red is open in another window. Type another name.");
      assertThrows(NotUnderstoodException.class, () -> name.take("red"));
      name.take("window");
      assertThat(name.question()).isNull();
    }
  }

  @Test
  void aBenchOfOthersIsJoinedOnlyOnPurpose() throws Exception {
    try (BenchName name = named("red", "Cleo")) {
      assertThat(told(name))
          .isEqualTo(
              "Bench red has students already: Ana, Ben. Type another name. To join them, type red"
                  + " once more.");
      name.take("red");
      assertThat(name.question()).isNull();
    }
  }

  @Test
  void aDesksNameIsAskedForAgain() throws Exception {
    try (BenchName name = named("desk", "Cleo")) {
      assertThat(told(name)).contains("is the teacher's desk");
    }
  }
}
