package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static quarterturn.lesson.Demo.T;
import static quarterturn.lesson.Demo.came;
import static quarterturn.lesson.Demo.opened;
import static quarterturn.lesson.Demo.predicted;
import static quarterturn.lesson.Demo.resulted;
import static quarterturn.lesson.Demo.shown;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;

class DeskViewTest {
  private static final LessonEvent HELD =
      new LessonEvent.Held(T, Demo.spot("read", 1), "the last reading, read back", Demo.GAP);

  private static LessonEvent ticked(int minutes) {
    return new LessonEvent.Ticked(T.plus(Duration.ofMinutes(minutes)));
  }

  /** What a bench answers to all desks. */
  private static WriterLog taking(WriterLog bench, List<WriterLog> desks) {
    String writer = requireNonNull(bench.header()).writer();
    List<LessonEvent> events = new ArrayList<>(bench.events());
    Map<Ref, Order> orders = WriterLog.orders(writer, desks);
    while (true) {
      BenchLesson lesson = BenchLesson.of(writer, Level.WORKED, events);
      LessonEvent answer = Acceptance.next(lesson, orders, T);
      if (answer == null) {
        return new WriterLog(bench.header(), events, null, 0);
      }
      events.add(answer);
    }
  }

  @Test
  void aBenchThatLeftInOrderIsDoneAndAnOrderNeedNotWaitForIt() {
    LessonEvent left = new LessonEvent.Left(T, true);
    WriterLog desk =
        Demo.log(
            Demo.LESSON,
            "desk",
            WriterLog.Part.BOARD,
            new LessonEvent.Ordered(T, null, new Order.End()));
    WriterLog gone = Demo.bench("bench-a", came("Ana"), left);
    DeskView view = DeskView.of(Demo.PLAN, List.of(gone, desk));
    assertThat(DeskWords.stands(view.rows().get(0))).isEqualTo("done");
    assertThat(view.rows().get(0).bench().gone()).isTrue();
    assertThat(view.given().get(0).answers()).containsExactly("bench-a", DeskView.LEFT);
    WriterLog back =
        Demo.bench("bench-a", came("Ana"), left, new LessonEvent.Joined(T, "By the window"));
    view = DeskView.of(Demo.PLAN, List.of(back, desk));
    assertThat(DeskWords.stands(view.rows().get(0))).isEqualTo("works");
    assertThat(view.given().get(0).answers()).containsExactly("bench-a", DeskView.NOT_SEEN);
  }

  @Test
  void stopsComeFirstThenWhoWaitsLongestByTheirOwnClock() {
    WriterLog works = Demo.bench("bench-a", came("Ana"));
    WriterLog held = Demo.bench("bench-b", came("Ben"), HELD, ticked(3));
    WriterLog longer = Demo.bench("bench-c", came("Cleo"), HELD, ticked(9));
    WriterLog stopped =
        Demo.bench("bench-d", came("Dan"), new LessonEvent.Stopped(T, "It creaked."));
    WriterLog elsewhere = Demo.log("2027-01-01-old", "bench-e", WriterLog.Part.BENCH, HELD);
    List<WriterLog> all = new ArrayList<>(List.of(works, held, longer, stopped, elsewhere));
    DeskView view = DeskView.of(Demo.PLAN, all);
    assertThat(view.rows().stream().map(r -> r.bench().bench()))
        .containsExactly("bench-d", "bench-c", "bench-b", "bench-a")
        .inOrder();
    assertThat(view.rows().get(0).waiting().what()).isEqualTo("stopped: It creaked.");
    assertThat(view.rows().get(1).waiting().howLong()).isEqualTo(Duration.ofMinutes(9));
    Collections.reverse(all);
    assertThat(DeskView.of(Demo.PLAN, all)).isEqualTo(view);
  }

  @Test
  void aClockSetBackMakesNoTimeNegative() {
    WriterLog back = Demo.bench("bench-a", came("Ana"), HELD, ticked(-10));
    assertThat(DeskView.of(Demo.PLAN, List.of(back)).rows().get(0).waiting().howLong())
        .isEqualTo(Duration.ZERO);
  }

  @Test
  void aPredictionIsHiddenOnTheDeskUntilItsReadingIsShown() {
    WriterLog before =
        Demo.bench("bench-a", came("Ana"), opened("read", 1, false), predicted(2, "Ana"));
    StepSpread hidden = DeskView.of(Demo.PLAN, List.of(before)).spreads().get(0);
    assertThat(hidden.locked()).isEqualTo(1);
    assertThat(hidden.sizes()).isEmpty();
    assertThat(hidden.readings()).isEmpty();
    WriterLog after =
        Demo.bench(
            "bench-a",
            came("Ana"),
            opened("read", 1, false),
            predicted(2, "Ana"),
            shown(2),
            resulted(2));
    StepSpread open = DeskView.of(Demo.PLAN, List.of(after)).spreads().get(0);
    assertThat(open.sizes()).containsExactly(0.3);
    assertThat(open.directions()).isEmpty();
    assertThat(open.readings()).containsExactly(Demo.GAP.bracket());
  }

  @Test
  void ofTwoBoardsThatReleaseTheSameHoldOneIsTakenAndOneCameLate() {
    WriterLog bench = Demo.bench("bench-a", came("Ana"), HELD);
    LessonEvent release =
        new LessonEvent.Ordered(T, "bench-a", new Order.Release(new Ref("bench-a", 2), Demo.GAP));
    List<WriterLog> desks = List.of(Demo.desk("desk-y", release), Demo.desk("desk-x", release));
    WriterLog after = taking(bench, desks);
    BenchLesson lesson = BenchLesson.of("bench-a", Level.WORKED, after.events());
    assertThat(lesson.keptBy()).isEmpty();
    assertThat(requireNonNull(lesson.keep(new Ref("bench-a", 2))).releasedBy())
        .isEqualTo(new Ref("desk-x", 1));
    List<WriterLog> all = List.of(after, desks.get(0), desks.get(1));
    assertThat(LessonProof.of(after, all)).isEmpty();
    assertThat(DeskView.of(Demo.PLAN, all).given().stream().map(g -> g.answers().get("bench-a")))
        .containsExactly("taken", "already released")
        .inOrder();
  }

  @Test
  void theFirstThatIsValidWinsWhereTheOtherReadTheValueWrong() {
    WriterLog bench = Demo.bench("bench-a", came("Ana"), HELD);
    Ref hold = new Ref("bench-a", 2);
    List<WriterLog> desks =
        List.of(
            Demo.desk("desk-x", Demo.release(hold, Demo.gap(0.35))),
            Demo.desk("desk-y", Demo.release(hold, Demo.GAP)));
    BenchLesson lesson = BenchLesson.of("bench-a", Level.WORKED, taking(bench, desks).events());
    assertThat(requireNonNull(lesson.keep(hold)).releasedBy()).isEqualTo(new Ref("desk-y", 1));
  }

  @Test
  void aReleaseOfAHoldThatHasNotArrivedWaitsForIt() {
    WriterLog bench = Demo.bench("bench-a", came("Ana"));
    WriterLog holds =
        Demo.desk("desk-y", new LessonEvent.Ordered(T, null, new Order.Hold("Look here.")));
    WriterLog releases = Demo.desk("desk-x", Demo.release(new Ref("desk-y", 1), Value.NONE));
    WriterLog first = taking(bench, List.of(releases));
    assertThat(first.events()).hasSize(1);
    WriterLog then = taking(first, List.of(releases, holds));
    assertThat(BenchLesson.of("bench-a", Level.WORKED, then.events()).keptBy()).isEmpty();
    assertThat(then.events()).hasSize(3);
  }

  /** A turn lies between, so that the two are no readings of one gap. */
  @Test
  void aSecondReadingOfAStepStandsForItself() {
    WriterLog twice =
        Demo.bench(
            "bench-a",
            came("Ana"),
            opened("read", 1, false),
            predicted(2, "Ana"),
            shown(2),
            resulted(2),
            opened("read", 2, false),
            predicted(6, "Ana"),
            shown(6),
            resulted(6));
    WriterLog once =
        Demo.bench(
            "bench-b",
            came("Ben"),
            opened("read", 4, false),
            predicted(2, "Ben"),
            shown(2),
            resulted(2));
    List<StepSpread> spreads = DeskView.of(Demo.PLAN, List.of(twice, once)).spreads();
    assertThat(spreads.stream().map(s -> s.step() + " " + s.readings().size()))
        .containsExactly("relief/read 2", "relief/read, time 2 1")
        .inOrder();
  }
}
