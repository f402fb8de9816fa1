package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static quarterturn.lesson.Demo.T;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Demo;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.store.WriterLog;

class ReturningTest {
  private static final String NOW = "2027-09-01-now";

  private static WriterLog lesson(String id, LessonEvent... events) {
    return Demo.log(id, "bench-" + id, WriterLog.Part.BENCH, events);
  }

  private static LessonEvent again(boolean missed, boolean season) {
    return new LessonEvent.AskedAgain(T, "Ana", "Why?", "So.", missed, season);
  }

  private static List<String> due(boolean season, WriterLog... logs) {
    List<WriterLog> all = new ArrayList<>(List.of(logs));
    List<String> due = Returning.due(all, NOW, "Ana", season);
    Collections.reverse(all);
    assertThat(Returning.due(all, NOW, "Ana", season)).isEqualTo(due);
    return due;
  }

  private static final WriterLog MISSED = lesson("2027-03-01-a", again(true, false));
  private static final WriterLog WELL = lesson("2027-04-01-b", again(false, false));

  @Test
  void aMissedQuestionComesBackNextTime() {
    assertThat(due(false, MISSED)).containsExactly("Why?");
    assertThat(due(true, MISSED)).containsExactly("Why?");
    assertThat(Returning.due(List.of(MISSED), NOW, "Ben", false)).isEmpty();
    assertThat(Returning.due(List.of(MISSED), "2027-03-01-a", "Ana", false)).isEmpty();
  }

  @Test
  void onceItWentWellItComesBackAtTheSeasonalCheckAndThenNoMore() {
    assertThat(due(false, MISSED, WELL)).isEmpty();
    assertThat(due(true, MISSED, WELL)).containsExactly("Why?");
    WriterLog season = lesson("2027-06-01-c", again(false, true));
    assertThat(due(true, MISSED, WELL, season)).isEmpty();
    WriterLog missed = lesson("2027-06-01-c", again(true, true));
    assertThat(due(false, MISSED, WELL, missed)).containsExactly("Why?");
  }

  @Test
  void aWrongPredictionBringsItsQuestionBackThoughTheStudentDoesNotAsk() {
    LessonEvent reflected =
        new LessonEvent.Reflected(T, 2, "Ana", "Hm.", "What if?", "Less.", false);
    LessonEvent wrong = new LessonEvent.Predicted(T, 2, "Ana", Demo.guess(Direction.MORE, 0.9));
    LessonEvent open = Demo.opened("read", 1, false);
    WriterLog off =
        lesson(
            "2027-03-01-a",
            Demo.came("Ana"),
            open,
            wrong,
            Demo.shown(2),
            Demo.resulted(2),
            reflected);
    assertThat(due(false, off)).containsExactly("What if?");
    WriterLog right =
        lesson(
            "2027-03-01-a",
            Demo.came("Ana"),
            open,
            Demo.predicted(2, "Ana"),
            Demo.shown(2),
            Demo.resulted(2),
            reflected);
    assertThat(due(true, right)).isEmpty();
  }

  private static WriterLog answered(String id, boolean missed) {
    return lesson(
        id,
        Demo.came("Ana"),
        Demo.opened("read", 1, false),
        new LessonEvent.Predicted(T, 2, "Ana", Demo.guess(Direction.MORE, 0.9)),
        Demo.shown(2),
        Demo.resulted(2),
        new LessonEvent.Reflected(T, 2, "Ana", null, "What if?", "Less.", missed));
  }

  private static WriterLog decided(String id, String question, boolean again) {
    Order order = new Order.ComeBack("Ana", question, again);
    return Demo.log(id, "desk", WriterLog.Part.BOARD, new LessonEvent.Ordered(T, null, order));
  }

  @Test
  void onlyTheAnswerDecidesWhereItWasChosen() {
    assertThat(due(false, answered("2027-03-01-a", true))).containsExactly("What if?");
    assertThat(due(false, answered("2027-03-01-a", false))).isEmpty();
  }

  @Test
  void aTeacherAddsAndTakesAwayWhatComesBack() {
    WriterLog missed = answered("2027-03-01-a", true);
    WriterLog well = answered("2027-03-01-a", false);
    assertThat(due(false, missed, decided("2027-03-01-a", "What if?", false))).isEmpty();
    assertThat(due(false, well, decided("2027-03-01-a", "What if?", true)))
        .containsExactly("What if?");
    // Decided in the lesson that begins now, it holds at once.
    assertThat(due(false, missed, decided(NOW, "What if?", false))).isEmpty();
    assertThat(due(false, missed, decided(NOW, "Why?", true))).containsExactly("What if?", "Why?");
  }
}
