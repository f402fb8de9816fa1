package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.unit.Turn;

/** Which turns a session's start tells one by one, and what the others come to. */
class TurnsToldTest {
  private static final int DAY = 24 * 60;
  private static final Instant NOW = Samples.at(100 * DAY);
  private static final Instant DAY_BEFORE = Samples.at(99 * DAY);

  private static Event.Past turn(int minute, Turn turn) {
    return new Event.Past(Samples.at(minute), turn, null, null);
  }

  /** This many turns of a sixteenth, a day apart; the first is made on the first day. */
  private static List<Event.Past> turns(int many) {
    List<Event.Past> turns = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      turns.add(turn(i * DAY, Turn.SIXTEENTH));
    }
    return turns;
  }

  private static Event.Started started(List<Event.Past> past, Event.@Nullable Summed summed) {
    return new Event.Started(
        NOW,
        "relief",
        3,
        "d1",
        Role.BEGINNER,
        "bass",
        "bass-34",
        null,
        null,
        past,
        List.of(),
        null,
        Carried.NOTHING,
        null,
        null,
        List.of(),
        null,
        null,
        new Event.Earlier(3, "a", summed));
  }

  @Test
  void asManyAreToldAsTheAdviceLooksBackOnAndTheRestIsAddedUp() {
    List<Event.Past> all = turns(BeliefAdvisor.MOST_MOVES + 6);
    TurnsTold told = TurnsTold.of(null, all, DAY_BEFORE, null);
    assertThat(told.listed()).isEqualTo(all.subList(6, all.size()));
    assertThat(told.summed())
        .isEqualTo(new Event.Summed(new Turn(6 / 16.0), 6, Samples.at(5 * DAY)));
    TurnsTold later = TurnsTold.of(told.summed(), turns(30).subList(6, 30), DAY_BEFORE, null);
    assertThat(later.summed())
        .isEqualTo(new Event.Summed(new Turn(10 / 16.0), 10, Samples.at(9 * DAY)));
  }

  @Test
  void theLastDayAndWhatMayBeSetBackAreAlwaysTold() {
    List<Event.Past> all = turns(60);
    assertThat(TurnsTold.of(null, all, Samples.at(10 * DAY), null).listed()).hasSize(50);
    assertThat(TurnsTold.of(null, all, DAY_BEFORE, Samples.at(20 * DAY)).listed()).hasSize(40);
    List<Event.Past> atOnce = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      atOnce.add(turn(0, Turn.SIXTEENTH));
    }
    assertThat(TurnsTold.of(null, atOnce, DAY_BEFORE, null).summed()).isNull();
  }

  @Test
  void aSessionThatGoesOnLearnsOfTurnsItDoesNotKnow() {
    List<Event.Past> all = turns(8);
    Event.Started start = started(all.subList(0, 5), null);
    assertThat(TurnsTold.beside(start, TurnsTold.of(null, all, Samples.at(-1), null)))
        .isEqualTo(all.subList(5, 8));
  }

  @Test
  void ofTurnsThatAreAddedUpSinceItLearnsWhatTheSumsDifferBy() {
    Event.Started start = started(turns(5), null);
    Event.Summed sum = new Event.Summed(new Turn(7 / 16.0), 7, Samples.at(6 * DAY));
    Event.Past last = turn(50 * DAY, Turn.EIGHTH);
    assertThat(TurnsTold.beside(start, new TurnsTold(sum, List.of(last))))
        .containsExactly(turn(6 * DAY, Turn.EIGHTH), last)
        .inOrder();
  }

  @Test
  void whatItsOwnSumHadIsNotCountedAgain() {
    Event.Summed sum = new Event.Summed(new Turn(3 / 16.0), 3, Samples.at(2 * DAY));
    List<Event.Past> all = turns(9);
    Event.Started start = started(all.subList(3, 9), sum);
    assertThat(TurnsTold.beside(start, TurnsTold.of(null, all, Samples.at(-1), null))).isEmpty();
  }
}
