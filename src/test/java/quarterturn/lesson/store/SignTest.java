package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.student.LessonSession;

/** A bench's sign of life. */
class SignTest {
  @TempDir Path folder;

  @Test
  void aBenchWritesItWhileItIsOpenAndNothingElse() throws Exception {
    try (LessonSession session = DemoCourse.session(folder, false, "Ana")) {
      session.look();
      session.look();
      assertThat(Sign.in(folder).keySet()).containsExactly("left");
      assertThat(Sign.in(folder).get("left")).isEqualTo(new Sign(1, session.now()));
    }
    assertThat(Sign.in(folder)).isEmpty();
    assertThat(LessonFolder.read(folder).logs().get(0).all(LessonEvent.Ticked.class)).isEmpty();
  }

  @Test
  void whatIsNoSignIsPassedOver() throws Exception {
    Sign sign = new Sign(3, Instant.EPOCH);
    sign.write(folder, "red");
    Files.writeString(folder.resolve("half.sign"), "3 19");
    Files.writeString(folder.resolve("empty.sign"), "");
    Files.writeString(folder.resolve("long.sign"), "3 ".repeat(1000));
    Files.writeString(folder.resolve(".red.sign"), "4 " + Instant.EPOCH);
    assertThat(Sign.in(folder)).containsExactly("red", sign);
  }
}
