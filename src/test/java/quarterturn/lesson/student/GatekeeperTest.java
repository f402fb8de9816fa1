package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static quarterturn.lesson.Demo.BENCH;
import static quarterturn.lesson.Demo.GAP;
import static quarterturn.lesson.Demo.T;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonFold;
import quarterturn.lesson.LessonRules;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Value;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

class GatekeeperTest {
  private final List<LessonEvent> events = new ArrayList<>();
  private BenchLesson lesson = BenchLesson.empty(BENCH, Level.WORKED);

  private void happen(LessonEvent... more) {
    for (LessonEvent event : more) {
      assertThat(LessonRules.objection(lesson, event)).isNull();
      events.add(event);
      lesson = LessonFold.after(lesson, event);
    }
  }

  private Gate gate(Moment moment) {
    Gate gate = new Gatekeeper(lesson, moment, Demo.PLAN, T).gate();
    while (gate instanceof Gate.Record own) {
      happen(own.event());
      gate = new Gatekeeper(lesson, moment, Demo.PLAN, T).gate();
    }
    return gate;
  }

  private int round() {
    return requireNonNull(lesson.lastRound()).n();
  }

  private Gate predictedBy(Moment moment, String... students) {
    gate(moment);
    Arrays.stream(students).forEach(s -> happen(Demo.predicted(round(), s)));
    return gate(moment);
  }

  @Test
  void aTellIsOpenAtOnce() {
    happen(Demo.came("Ana"));
    assertThat(gate(Demo.moment(new Prompt.Tell(Demo.said("look")), 1, null)))
        .isEqualTo(new Gate.Open(null));
  }

  @Test
  void nobodyReadsForNobody() {
    assertThat(gate(Demo.moment(Demo.measure(), 1, null))).isEqualTo(new Gate.Nobody());
  }

  @Test
  void aReadingIsPredictedReadBlindUnveiledReadAndThoughtAbout() {
    happen(Demo.came("Ana"), Demo.came("Ben"));
    Moment reading = Demo.moment(Demo.measure(), 1, null);
    Gate.Predict predict = (Gate.Predict) gate(reading);
    assertThat(predict.missing()).containsExactly("Ana", "Ben");
    happen(Demo.predicted(round(), "Ben"));
    assertThat(((Gate.Predict) gate(reading)).missing()).containsExactly("Ana");
    assertThat(LessonRules.objection(lesson, Demo.predicted(round(), "Ben"))).contains("locked");
    assertThat(LessonRules.objection(lesson, Demo.shown(round()))).contains("Ana");
    happen(Demo.predicted(round(), "Ana"));
    assertThat(gate(reading)).isEqualTo(new Gate.ReadBlind(round(), List.of("Ana", "Ben")));
    happen(Demo.blindRead(round(), "Ana"));
    assertThat(gate(reading)).isEqualTo(new Gate.ReadBlind(round(), List.of("Ben")));
    assertThat(LessonRules.objection(lesson, Demo.resulted(round()))).contains("hidden");
    happen(Demo.blindRead(round(), "Ben"));
    assertThat(requireNonNull(((Gate.Open) gate(reading)).spread()).agree()).isTrue();
    happen(Demo.resulted(round()));
    Moment next = Demo.moment(new Prompt.Tell(Demo.said("look")), 2, GAP);
    Gate.Reflect reflect = (Gate.Reflect) gate(next);
    assertThat(reflect.student()).isEqualTo("Ana");
    assertThat(reflect.result()).isEqualTo(GAP);
    assertThat(reflect.question()).isEqualTo("What if?");
    for (String student : List.of("Ana", "Ben")) {
      happen(new LessonEvent.Reflected(T, round(), student, "ok", null, null, false));
    }
    assertThat(gate(next)).isEqualTo(new Gate.Open(null));
    assertThat(lesson.standing("Ana")).isEqualTo(new Levels.Standing(Level.WORKED, 1, false));
  }

  @Test
  void whoComesBeforeItIsShownPredictsTooAndWhoLeftIsNotWaitedFor() {
    happen(Demo.came("Ana"), Demo.came("Ben"));
    Moment reading = Demo.moment(Demo.measure(), 1, null);
    gate(reading);
    happen(Demo.predicted(round(), "Ana"), Demo.came("Cleo"), new LessonEvent.Went(T, "Ben"));
    assertThat(((Gate.Predict) gate(reading)).missing()).containsExactly("Cleo");
  }

  @Test
  void aTurnWaitsForTheTeacherWhoReadsItBack() {
    happen(Demo.came("Ana"));
    Moment turn = Demo.moment(Demo.turn(), 1, GAP);
    Gate.Held held = (Gate.Held) predictedBy(turn, "Ana");
    assertThat(held.hold().value()).isEqualTo(new Value.Rod(Turn.EIGHTH));
    assertThat(LessonRules.objection(lesson, Demo.resulted(round())))
        .contains("waits for the teacher");
    Ref ref = held.hold().ref();
    Ref order = new Ref("desk-a", 1);
    Order wrong = new Order.Release(ref, new Value.Rod(Turn.EIGHTH.opposite()));
    assertThat(Acceptance.refusal(lesson, wrong)).isEqualTo(Refusal.VALUE_DIFFERS);
    assertThat(LessonRules.objection(lesson, new LessonEvent.Accepted(T, order, wrong)))
        .isNotNull();
    Order right = new Order.Release(ref, new Value.Rod(Turn.EIGHTH));
    happen(new LessonEvent.Accepted(T, order, right));
    assertThat(gate(turn)).isEqualTo(new Gate.Open(null));
    assertThat(requireNonNull(lesson.keep(ref)).releasedBy()).isEqualTo(order);
  }

  @Test
  void aStopComesBeforeAllElseAndNamesNobody() {
    happen(Demo.came("Ana"), new LessonEvent.Stopped(T, null));
    Moment reading = Demo.moment(Demo.measure(), 1, null);
    Gate.Stopped stopped = (Gate.Stopped) gate(reading);
    Order hold = new Order.Hold("Look here.");
    happen(new LessonEvent.Accepted(T, new Ref("desk-a", 1), hold));
    assertThat(gate(reading)).isEqualTo(stopped);
    Order go = new Order.Release(stopped.stop().ref(), Value.NONE);
    happen(new LessonEvent.Accepted(T, new Ref("desk-a", 2), go));
    assertThat(((Gate.Held) gate(reading)).hold().what()).isEqualTo("Look here.");
    Order on = new Order.Release(new Ref("desk-a", 1), Value.NONE);
    happen(new LessonEvent.Accepted(T, new Ref("desk-b", 1), on));
    assertThat(gate(reading)).isInstanceOf(Gate.Predict.class);
    happen(new LessonEvent.Accepted(T, new Ref("desk-b", 2), new Order.End()));
    assertThat(gate(reading)).isEqualTo(new Gate.Over());
  }

  @Test
  void anAnswerThatTheSessionTookBeforeACrashIsNotLost() {
    happen(Demo.came("Ana"));
    Moment reading = Demo.moment(Demo.measure(), 1, null);
    predictedBy(reading, "Ana");
    happen(Demo.blindRead(round(), "Ana"));
    assertThat(gate(reading)).isInstanceOf(Gate.Open.class);
    Moment after =
        new Moment(
            Demo.spot("look", 2), new Prompt.Tell(Demo.said("look")), GAP, GAP, false, List.of());
    assertThat(gate(after)).isInstanceOf(Gate.Reflect.class);
    assertThat(requireNonNull(lesson.lastRound()).result()).isEqualTo(GAP);
  }

  @Test
  void aCorrectionIsNotPredictedAnew() {
    happen(Demo.came("Ana"));
    Moment reading = Demo.moment(Demo.measure(), 1, null);
    predictedBy(reading, "Ana");
    happen(Demo.blindRead(round(), "Ana"));
    gate(reading);
    happen(Demo.resulted(round()));
    Moment again = new Moment(Demo.spot("read", 2), Demo.measure(), GAP, null, true, List.of());
    assertThat(gate(again)).isEqualTo(new Gate.Open(null));
    happen(new LessonEvent.Resulted(T, round(), Demo.gap(0.6)));
    Moment next = Demo.moment(new Prompt.Tell(Demo.said("look")), 3, GAP);
    assertThat(((Gate.Reflect) gate(next)).result()).isEqualTo(Demo.gap(0.6));
  }
}
