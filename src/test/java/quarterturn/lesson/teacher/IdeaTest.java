package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Direction;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;
import quarterturn.unit.Turn;

/** Eight students predict three turns; the last could not be made. */
class IdeaTest {
  private static final int STUDENTS = 8;
  private static final Value TIGHTER = new Value.Rod(Turn.EIGHTH);

  private final List<LessonEvent> events = new ArrayList<>();

  private void turn(int right, Value result) {
    int round = events.size() + 1;
    Spot spot = new Spot("relief", "turn", "The turn", round);
    events.add(new LessonEvent.Opened(InventedLesson.NOW, spot, true, false, null, 1 / 16.0, null));
    for (int i = 1; i <= STUDENTS; i++) {
      Direction way = i <= right ? Direction.MORE : Direction.LESS;
      Prediction prediction = new Prediction(way, 0.125, "so", false);
      events.add(new LessonEvent.Predicted(InventedLesson.NOW, round, "S" + i, prediction));
    }
    events.add(new LessonEvent.Shown(InventedLesson.NOW, round));
    events.add(new LessonEvent.Resulted(InventedLesson.NOW, round, result));
  }

  @Test
  void isCountedAtFirstAndAtLast() {
    for (int i = 1; i <= STUDENTS; i++) {
      events.add(new LessonEvent.Came(InventedLesson.NOW, "S" + i));
    }
    turn(3, TIGHTER);
    turn(7, TIGHTER);
    turn(0, Value.NONE);
    WriterLog.Header header = new WriterLog.Header(InventedLesson.ID, "red", WriterLog.Part.BENCH);
    List<WriterLog> logs = List.of(new WriterLog(header, events, null, 0));
    assertThat(Idea.of(StudentRecord.of(InventedLesson.PLAN, logs)))
        .containsExactly(
            new Idea("Which way the rod is turned", 3, 7, STUDENTS),
            new Idea("How far the rod is turned", STUDENTS, STUDENTS, STUDENTS));
  }
}
