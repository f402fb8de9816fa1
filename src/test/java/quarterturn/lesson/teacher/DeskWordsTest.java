package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;

class DeskWordsTest {
  private static final Instant AT = InventedLesson.NOW;
  private static final Sight SIGHT = InventedLesson.sight();

  private static DeskView.Row row(Sight sight, String bench) {
    return Objects.requireNonNull(sight.row(bench));
  }

  private static StepSpread spread(String step) {
    return SIGHT.view().spreads().stream()
        .filter(s -> s.step().equals(step))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBenchInASentence() {
    assertThat(DeskWords.sentence(SIGHT, row(SIGHT, "blue")))
        .isEqualTo(
            "Blue (Cleo; The turn: slacken the strings): STOPPED: It creaked, for 1 minute;"
                + " not heard of for 2 min.");
    assertThat(DeskWords.sentence(SIGHT, row(SIGHT, "green")))
        .isEqualTo(
            "Green (Dov, Eda, Fin; Measure: relief on the lowest string): waits for reasons of Eda, Fin, for 2"
                + " minutes; not heard of since this desk opened.");
    assertThat(DeskWords.summary(SIGHT))
        .isEqualTo("3 benches, 1 stopped, 1 waits for you, 2 not heard of");
  }

  @Test
  void theValueThatIsReadBackIsNeverTold() {
    String red = DeskWords.sentence(SIGHT, row(SIGHT, "red"));
    assertThat(red).contains("HOLD POINT: the turn, read back before it is made, for 4 minutes.");
    assertThat(red).doesNotContain("1/8");
    assertThat(red).doesNotContain("tighten");
  }

  @Test
  void whenABenchWasHeardOf() {
    assertThat(DeskWords.heard(SIGHT, row(SIGHT, "red"))).isEqualTo("heard 4 s ago");
    assertThat(DeskWords.heard(SIGHT, row(SIGHT, "blue"))).isEqualTo("not heard of for 2 min");
    assertThat(DeskWords.heard(SIGHT, row(SIGHT, "green")))
        .isEqualTo("not heard of since this desk opened");
  }

  @Test
  void predictionsAndReadingsFirstHowFarApartThenTheMean() {
    assertThat(DeskWords.spread(spread("relief/turn")))
        .containsExactly("Predicted: 2 tighten; 1/8 turn to 1/4 turn.");
    assertThat(DeskWords.spread(spread("relief/read")))
        .containsExactly(
            "Predicted: 0.2 to 0.6 mm.",
            "Read: 0.30 to 0.35 mm; 0.40 to 0.45 mm; 0.45 to 0.50 mm; 0.60 to 0.65 mm.",
            "They reach from 0.30 to 0.65 mm.",
            "Their mean is 0.44 to 0.49 mm.")
        .inOrder();
  }

  @Test
  void aDeskThatCameSecondIsToldKindly() {
    LessonEvent release =
        new LessonEvent.Ordered(
            AT, "red", new Order.Release(InventedLesson.RED_HOLD, InventedLesson.TURN));
    List<WriterLog> ours = InventedLesson.with(InventedLesson.logs(), "desk", release);
    Order taken = new Order.Release(InventedLesson.RED_HOLD, InventedLesson.TURN);
    List<WriterLog> then =
        InventedLesson.with(
            ours,
            "red",
            new LessonEvent.Accepted(AT, new Ref("annex", 1), taken),
            new LessonEvent.Declined(AT, new Ref("desk", 2), Refusal.ALREADY_RELEASED));
    List<String> news = DeskNews.between(InventedLesson.sight(ours), InventedLesson.sight(then));
    assertThat(news)
        .containsExactly(
            "Red was let go on by annex just before. Your release came second and changes"
                + " nothing.",
            "Red goes on. Red (Ana, Ben; The turn: the turn of the rod): works.")
        .inOrder();
  }

  @Test
  void newsTellsWhatChangedAndNothingElse() {
    assertThat(DeskNews.between(SIGHT, SIGHT)).isEmpty();
    Sight ticked =
        InventedLesson.sight(
            InventedLesson.with(InventedLesson.logs(), "red", new LessonEvent.Ticked(AT)));
    assertThat(DeskNews.between(SIGHT, ticked)).isEmpty();
    Sight stopped =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(), "green", new LessonEvent.Stopped(AT, "\u001b[31mit\u0007")));
    List<String> news = DeskNews.between(SIGHT, stopped);
    assertThat(news).hasSize(1);
    assertThat(news.get(0)).contains("STOPPED");
    assertThat(news.get(0)).doesNotContain("\u001b");
  }

  @Test
  void ordersAndAnswers() {
    Sight sight =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "desk",
                new LessonEvent.Ordered(AT, null, new Order.Hold("Look here.")),
                new LessonEvent.Ordered(
                    AT, "blue", new Order.Release(InventedLesson.BLUE_STOP, Value.NONE)),
                new LessonEvent.Ordered(AT, null, new Order.End())));
    assertThat(
            sight.view().given().stream()
                .map(g -> DeskWords.order(sight, g) + " (" + DeskWords.answers(sight, g) + ")"))
        .containsExactly(
            "desk: Ben at Red: the last step is left to the student, kept so (Red taken)",
            "desk: hold all: Look here. (all not seen yet)",
            "desk: release Blue (Blue not seen yet)",
            "desk: end the lesson (all not seen yet)")
        .inOrder();
    assertThat(DeskWords.sentence(sight, row(sight, "blue")))
        .endsWith(
            "STOPPED: It creaked, for 1 minute (released; it has not looked yet); not heard of for"
                + " 2 min.");
    assertThat(sight.ended()).isTrue();
    assertThat(sight.over()).isFalse();
  }
}
