package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.PastAnswers;
import quarterturn.session.RefusedException;

/** A technician types what differs from the record, and nothing else of it is asked. */
class NotAsRecordedTest {
  private static Event.Known known(Recorded what, String answer) {
    return new Event.Known(Play.NOON, what, answer);
  }

  private static Play play() throws Exception {
    return Play.known(
        Play.relief(),
        Role.TECHNICIAN,
        "bass-34",
        known(Recorded.ROD_PLACE, "under-plate"),
        known(Recorded.ROD, "single"),
        known(Recorded.ROD_NUT, "socket"),
        known(Recorded.ROD_KEY, "5 mm"));
  }

  @Test
  void whatIsOnRecordIsOneLine() throws Exception {
    assertThat(play().to("found-low").events).isNotEmpty();
    Play play = play();
    assertThat(play.bench.recorded().stream().map(one -> one.step() + " " + one.answer()).toList())
        .containsExactly(
            "rod-place under-plate", "rod-kind single", "nut-form socket", "key-socket 5 mm")
        .inOrder();
  }

  @Test
  void whatDiffersHoldsFromThenOn() throws Exception {
    Play play = play();
    play.give(new Answer.Differs(Recorded.ROD_PLACE, "headstock"));
    play.found("0.60..0.65").to("changed").choose("nothing");
    assertThat(play.step()).isEqualTo("key-fit");
    assertThat(play.events.toString()).contains("why=on record: headstock");
    assertThat(play.events.toString()).contains("why=on record: single");
    // The next session knows it too.
    List<Event.Known> then = PastAnswers.of(List.of(), List.of(play.events), Play.relief());
    assertThat(then.stream().filter(k -> k.what() == Recorded.ROD_PLACE).toList().get(0).answer())
        .isEqualTo("headstock");
  }

  @Test
  void itCanBeTakenBack() throws Exception {
    Play play = play();
    play.give(new Answer.Differs(Recorded.ROD_PLACE, "headstock"));
    play.give(new Answer.Correct());
    play.found("0.60..0.65").to("changed").choose("nothing");
    assertThat(play.step()).isEqualTo("plate");
  }

  @Test
  void whatIsAskedHereOrIsNoAnswerIsRefused() throws Exception {
    Play play = play();
    assertThrows(
        RefusedException.class,
        () -> play.bench.answer(new Answer.Differs(Recorded.ROD_PLACE, "attic")));
    assertThrows(
        RefusedException.class,
        () -> play.bench.answer(new Answer.Differs(Recorded.BRIDGE, "fixed")));
  }
}
