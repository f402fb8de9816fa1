package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import org.junit.jupiter.api.Test;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.teacher.DeskView;

class InventedLessonTest {
  /** What is shown of an invented lesson proves something only where it could have happened. */
  @Test
  void couldHaveHappened() {
    for (WriterLog log : DeskView.benches(InventedLesson.PLAN, InventedLesson.logs())) {
      assertWithMessage(String.valueOf(log.header()))
          .that(LessonProof.of(log, InventedLesson.logs()))
          .isEmpty();
    }
    DeskView view = DeskView.of(InventedLesson.PLAN, InventedLesson.logs());
    assertThat(view.rows().get(0).releases().get(0).ref()).isEqualTo(InventedLesson.BLUE_STOP);
    assertThat(view.rows().get(1).releases().get(0).ref()).isEqualTo(InventedLesson.RED_HOLD);
  }
}
