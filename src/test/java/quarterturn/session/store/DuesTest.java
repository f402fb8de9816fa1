package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Limits;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Due;
import quarterturn.session.Event;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.listing.Glance;
import quarterturn.unit.Turn;

/** The waits of re-checks are our policy on common practice, no source. */
class DuesTest {
  private static final Limits.Rechecks RECHECKS = ShippedRules.LIMITS.rechecks();
  private static final int DAY = 24 * 60;
  private static final Set<String> KEPT = Set.of("practice-bass", "blue-guitar");

  private static Glance glance(String name, Event... events) {
    return Samples.glance(name, List.of(events));
  }

  private static Event ended(int minute, boolean handOver) {
    return new Event.Ended(Samples.at(minute), "done", handOver, "in-window", "It is in.");
  }

  /** An eighth was turned, and the session ended. */
  private static Glance turned(String name, int begun, int end) {
    return turned(name, "practice-bass", begun, end);
  }

  private static Glance turned(String name, String instrument, int begun, int end) {
    return glance(
        name,
        Samples.started(begun, instrument),
        Samples.turned(begun + 1, Turn.EIGHTH),
        Samples.relief(end - 1, Which.LOWEST, 0.3, 0.35),
        ended(end, false));
  }

  /** The relief was read and nothing turned. */
  private static Glance read(String name, int begun) {
    return glance(
        name,
        Samples.started(begun, "practice-bass"),
        Samples.relief(begun + 5, Which.HIGHEST, 0.3, 0.35),
        ended(begun + 6, false));
  }

  private static List<Due> dues(int now, Glance... sessions) {
    return Dues.of(List.of(sessions), KEPT, RECHECKS, Samples.at(now));
  }

  private static List<Due.Why> why(List<Due> dues) {
    return dues.stream().map(Due::why).toList();
  }

  private static @Nullable Due afterTurn(Glance... sessions) {
    return dues(0, sessions).stream()
        .filter(d -> d.why() == Due.Why.DAY || d.why() == Due.Why.WEEK)
        .findFirst()
        .orElse(null);
  }

  private static Due.@Nullable Why whyAfterTurn(Glance... sessions) {
    Due due = afterTurn(sessions);
    return due == null ? null : due.why();
  }

  @Test
  void nothingIsDueWhereNothingIsKept() {
    assertThat(dues(0)).isEmpty();
  }

  /** A clock that stood four years ahead. */
  @Test
  void whatIsDatedFarAheadIsDueInItsOwnTimeFromNow() {
    int years = 60 * 24 * 1500;
    Due due = dues(100, turned("a-1", years, years + 10)).get(0);
    assertThat(due.why()).isEqualTo(Due.Why.DAY);
    assertThat(due.at()).isEqualTo(Samples.at(100 + 1440));
    List<Due> after = dues(100, turned("a-1", years, years + 10), turned("a-2", 0, 20));
    assertThat(after.get(0).session()).isEqualTo("a-2");
    assertThat(after.get(0).at()).isEqualTo(Samples.at(20 + 1440));
  }

  @Test
  void aSessionThatWaitsIsDueWhenItsWaitEnds() {
    Glance waits =
        glance(
            "a-1",
            Samples.started(0, "practice-bass"),
            new Event.WaitBegan(Samples.at(2), "rest", Samples.at(1442)),
            new Event.Left(Samples.at(3), "strings at pitch"));
    Due expected =
        new Due(
            Samples.at(1442),
            Due.Why.WAIT,
            "practice-bass",
            "relief",
            "a-1",
            "Settled, ready; go on with relief.",
            Samples.at(3));
    assertThat(dues(5, waits)).containsExactly(expected);
    assertWithMessage("the same when it is overdue").that(dues(9999, waits)).contains(expected);
    assertThat(expected.command()).isEqualTo("resume a-1");
    assertThat(expected.resumes()).isEqualTo("a-1");
    assertThat(expected.come(Samples.at(1441))).isFalse();
    assertThat(expected.come(Samples.at(1442))).isTrue();
  }

  @Test
  void aSessionThatWaitsForNothingIsDueNow() {
    Due due = dues(700, glance("a-1", Samples.started(0, "practice-bass"))).get(0);
    assertThat(due.at()).isEqualTo(Samples.at(700));
    assertThat(due.why()).isEqualTo(Due.Why.OPEN);
    assertThat(due.command()).isEqualTo("resume a-1");
  }

  @Test
  void anInstrumentWithoutANameIsCalledByItsKind() {
    Event.Started bare =
        new Event.Started(
            Samples.at(0),
            "relief",
            3,
            "d1",
            Role.BEGINNER,
            null,
            null,
            null,
            null,
            List.of(),
            List.of(),
            null,
            null);
    Due nameless = dues(1, glance("a-1", bare)).get(0);
    assertThat(nameless.instrument()).isEqualTo("an instrument without a name");
    Event kind = new Event.Chose(Samples.at(1), EngineQuestions.KIND, "bass-34", null);
    assertThat(dues(1, glance("a-1", bare, kind)).get(0).instrument()).isEqualTo("bass-34");
    assertWithMessage("it has no re-checks")
        .that(dues(1, glance("a-1", bare, kind, ended(2, false))))
        .isEmpty();
  }

  @Test
  void aSessionThatCannotBeGoneOnWithIsNotDue() {
    assertThat(dues(0, glance("a-1"))).isEmpty();
  }

  @Test
  void afterATurnTheReliefIsReadAgainInADay() {
    assertThat(afterTurn(turned("a-1", 0, 60)))
        .isEqualTo(
            new Due(
                Samples.at(60).plus(Duration.ofHours(24)),
                Due.Why.DAY,
                "practice-bass",
                "relief-check",
                "a-1",
                "A day after the rod was turned, read the relief again.",
                Samples.at(60)));
  }

  @Test
  void oneReCheckAtATimeAndEachIsAnsweredByALaterReading() {
    Glance turned = turned("a-1", 0, 60);
    assertThat(whyAfterTurn(turned)).isEqualTo(Due.Why.DAY);
    Due week = afterTurn(read("b-2", DAY + 70), turned);
    assertThat(week).isNotNull();
    assertThat(week.why()).isEqualTo(Due.Why.WEEK);
    assertThat(week.at()).isEqualTo(Samples.at(60).plus(Duration.ofDays(7)));
    assertThat(week.command()).isEqualTo("start relief-check --instrument practice-bass");
    assertThat(week.resumes()).isNull();
    assertWithMessage("both")
        .that(afterTurn(read("c-3", 8 * DAY), read("b-2", DAY + 70), turned))
        .isNull();
    assertWithMessage("the day's was left out")
        .that(afterTurn(read("c-3", 8 * DAY), turned))
        .isNull();
  }

  @Test
  void aReadingTooSoonAfterTheTurnAnswersNothing() {
    Glance turned = turned("a-1", 0, 60);
    int half = 60 + DAY / 2;
    assertThat(whyAfterTurn(read("b-2", half - 5), turned)).isEqualTo(Due.Why.WEEK);
    assertThat(whyAfterTurn(read("b-2", half - 6), turned)).isEqualTo(Due.Why.DAY);
    int halfWeek = 60 + 7 * DAY / 2;
    assertThat(whyAfterTurn(read("b-2", halfWeek - 5), turned)).isNull();
    assertThat(whyAfterTurn(read("b-2", halfWeek - 6), turned)).isEqualTo(Due.Why.WEEK);
  }

  @Test
  void aSessionThatReadNoReliefAnswersNothing() {
    Glance none =
        glance(
            "b-2",
            Samples.started(DAY + 70, "practice-bass"),
            Samples.unmeasured(DAY + 71),
            ended(DAY + 75, false));
    assertThat(whyAfterTurn(none, turned("a-1", 0, 60))).isEqualTo(Due.Why.DAY);
    Glance other =
        glance(
            "c-3",
            Samples.started(DAY + 70, "blue-guitar"),
            Samples.relief(DAY + 71, Which.LOWEST, 0.3, 0.35));
    assertWithMessage("another instrument's")
        .that(whyAfterTurn(other, turned("a-1", 0, 60)))
        .isEqualTo(Due.Why.DAY);
  }

  @Test
  void aLaterTurnBeginsItAnew() {
    Due again = afterTurn(turned("b-2", 2 * DAY, 2 * DAY + 60), turned("a-1", 0, 60));
    assertThat(again).isNotNull();
    assertThat(again.session()).isEqualTo("b-2");
    assertThat(again.why()).isEqualTo(Due.Why.DAY);
    Glance open =
        glance(
            "c-3",
            Samples.started(2 * DAY, "practice-bass"),
            Samples.turned(2 * DAY + 1, Turn.EIGHTH));
    assertWithMessage("what is due then is to go on")
        .that(why(dues(3 * DAY, open, turned("a-1", 0, 60))))
        .containsExactly(Due.Why.OPEN);
  }

  @Test
  void withARepairerNothingIsReadAgainBeforeTheSeason() {
    Glance over =
        glance(
            "b-2",
            Samples.started(100, "practice-bass"),
            Samples.turned(101, Turn.EIGHTH),
            ended(110, true));
    assertThat(why(dues(200, over, turned("a-1", 0, 60)))).containsExactly(Due.Why.SEASON);
    Glance unturned = glance("b-2", Samples.started(100, "practice-bass"), ended(110, true));
    assertThat(why(dues(200, unturned, turned("a-1", 0, 60)))).containsExactly(Due.Why.SEASON);
  }

  @Test
  void aRodThatWasNotTurnedIsReadAgainInASeasonOnly() {
    assertThat(dues(0, read("a-1", 0)))
        .containsExactly(
            new Due(
                Samples.at(6).plus(Duration.ofDays(90)),
                Due.Why.SEASON,
                "practice-bass",
                "season",
                "a-1",
                "A season after the last session, see whether the instrument has moved.",
                Samples.at(6)));
  }

  @Test
  void aLaterSessionThatBeganEndsTheSeason() {
    Glance begun = glance("b-2", Samples.started(95 * DAY, "practice-bass"));
    assertThat(why(dues(96 * DAY, begun, read("a-1", 0)))).containsExactly(Due.Why.OPEN);
    List<Due> both = dues(96 * DAY, read("b-2", 95 * DAY), read("a-1", 0));
    assertThat(both).hasSize(1);
    assertThat(both.get(0).session()).isEqualTo("b-2");
  }

  @Test
  void anInstrumentThatIsNoLongerKeptHasNothingToCome() {
    assertThat(Dues.of(List.of(turned("a-1", 0, 60)), Set.of(), RECHECKS, Samples.at(70)))
        .isEmpty();
  }

  @Test
  void theSoonestStandsFirst() {
    List<Glance> all = new ArrayList<>();
    all.add(glance("d-4", Samples.started(3 * DAY, "blue-guitar")));
    all.add(turned("a-1", 0, 60));
    List<Due> dues = Dues.of(all, KEPT, RECHECKS, Samples.at(4 * DAY));
    assertThat(why(dues)).containsExactly(Due.Why.DAY, Due.Why.OPEN, Due.Why.SEASON).inOrder();
    assertThat(dues).isInOrder(Comparator.comparing(Due::at));
  }

  @Test
  void pressingIsWhatIsOverdueAndWhatComesWithinTheWeekFiveAtMost() {
    List<Glance> all = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      all.add(0, turned("w-" + i, "bass-" + i, (11 - 2 * i) * DAY - 60, (11 - 2 * i) * DAY));
    }
    all.add(glance("open", Samples.started(0, "bass-0")));
    Set<String> names = all.stream().map(Glance::instrument).collect(Collectors.toSet());
    Instant now = Samples.at(DAY);
    List<Due> dues = Dues.of(all, names, RECHECKS, now);
    assertThat(Dues.pressing(dues, RECHECKS, now).stream().map(Due::session).toList())
        .containsExactly("w-6", "w-5", "w-4", "w-3", "w-2")
        .inOrder();
    assertThat(
            Dues.pressing(dues, RECHECKS, now.minusSeconds(1)).stream().map(Due::session).toList())
        .containsExactly("w-6", "w-5", "w-4", "w-3")
        .inOrder();
    assertThat(Dues.pressing(dues, RECHECKS, Samples.at(99 * DAY))).hasSize(5);
    assertWithMessage("a season is far off")
        .that(Dues.pressing(dues(0, read("a-1", 0)), RECHECKS, Samples.at(0)))
        .isEmpty();
  }

  @Test
  void keysAreTheSameOnEveryRunAndTellThingsApart() {
    Glance turned = turned("a-1", 0, 60);
    List<String> early = dues(0, turned).stream().map(Due::key).toList();
    assertThat(early).containsExactly("a-1 day", "a-1 season").inOrder();
    assertThat(dues(999 * DAY, turned).stream().map(Due::key).toList()).isEqualTo(early);
    Instant until = Samples.at(20);
    Event wait = new Event.WaitBegan(Samples.at(2), "settle", until);
    assertThat(dues(3, glance("b-2", Samples.started(0, "x"), wait)).get(0).key())
        .isEqualTo("b-2 wait 2027-03-01T09:20:00Z");
  }

  @Test
  void aTimeThatCannotBeMakesNothingDue() {
    Event wait = new Event.WaitBegan(Samples.at(2), "settle", Instant.MAX);
    Event end = new Event.Ended(Instant.MAX, "done", false, "in-window", "It is in.");
    Event left = new Event.Left(Instant.MIN, "strings at pitch");
    for (Event odd : List.of(wait, end, left)) {
      assertThat(dues(3, glance("a-1", Samples.started(0, "practice-bass"), odd))).isEmpty();
    }
  }

  @Test
  void controlCharactersInARecordAreNotShown() {
    Glance hostile = glance("a\u001b[2J", Samples.started(0, "b\nBEGIN:VEVENT"));
    Due due = dues(1, hostile).get(0);
    assertThat(due.instrument()).isEqualTo("b\uFFFDBEGIN:VEVENT");
    assertThat(due.command()).isEqualTo("resume a\uFFFD[2J");
  }
}
