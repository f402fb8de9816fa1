package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static quarterturn.lesson.Demo.BENCH;
import static quarterturn.lesson.Demo.GAP;
import static quarterturn.lesson.Demo.T;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Demo;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonFold;
import quarterturn.lesson.LessonRules;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.procedure.kind.Quantity;
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
    assertThat(reflect.missing()).containsExactly("Ana", "Ben").inOrder();
    assertThat(reflect.round().result()).isEqualTo(GAP);
    assertThat(reflect.question()).isEqualTo("What if?");
    for (String student : List.of("Ana", "Ben")) {
      happen(new LessonEvent.Reflected(T, round(), student, null, "What if?", "Less.", false));
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
  void theWayOfATurnIsPredictedBeforeItIsShownAndThenTheGap() {
    happen(Demo.came("Ana"));
    Moment choice =
        new Moment(
            Demo.spot("changed", 1),
            new Prompt.Tell(Demo.said("changed")),
            GAP,
            0.05,
            Map.of(),
            false,
            false,
            true,
            List.of());
    Gate.Predict way = (Gate.Predict) gate(choice);
    assertThat(way.round().opened().turn()).isTrue();
    happen(new LessonEvent.Predicted(T, round(), "Ana", Demo.way(Direction.MORE)));
    assertThat(gate(choice)).isInstanceOf(Gate.Open.class);
    int asked = round();
    // What comes before the turn asks nothing again.
    assertThat(gate(Demo.moment(new Prompt.Tell(Demo.said("detune")), 2, GAP)))
        .isInstanceOf(Gate.Open.class);
    Moment turn = Demo.moment(Demo.turn(), 3, GAP);
    Gate.Predict gap = (Gate.Predict) gate(turn);
    assertThat(gap.round().opened().turn()).isFalse();
    assertThat(gap.round().opened().before()).isEqualTo(GAP);
    happen(Demo.predicted(round(), "Ana"));
    assertThat(gate(turn)).isInstanceOf(Gate.Held.class);
    Value turned = new Value.Rod(Turn.EIGHTH);
    happen(new LessonEvent.Accepted(T, new Ref("desk-a", 1), released(turned)));
    assertThat(gate(turn)).isInstanceOf(Gate.Open.class);
    Moment after = after(4, new Prompt.Tell(Demo.said("key-out")), Map.of(asked, turned));
    Gate.Reflect why = (Gate.Reflect) gate(after);
    assertThat(why.question()).isNull();
    happen(new LessonEvent.Reflected(T, asked, "Ana", "too large", null, null, false));
    assertThat(gate(after)).isInstanceOf(Gate.Open.class);
    // The reading after it was predicted before the turn.
    assertThat(gate(after(5, Demo.measure(), Map.of()))).isInstanceOf(Gate.ReadBlind.class);
  }

  private static Moment after(int asked, Prompt prompt, Map<Integer, Value> came) {
    return Demo.moment(Demo.spot(prompt.said().step(), asked), prompt, GAP, came, false);
  }

  private Order released(Value value) {
    return new Order.Release(lesson.keptBy().get(0).ref(), value);
  }

  /**
   * Earlier versions asked the way of a turn and how far, at the turn, and then for its question.
   */
  @Test
  void aTurnThatAnEarlierVersionBeganGoesOn() {
    happen(Demo.came("Ana"));
    Spot spot = Demo.spot("turn", 1);
    happen(
        new LessonEvent.Stepped(T, spot),
        new LessonEvent.Opened(T, spot, true, false, GAP, 0.0625, "Why?"),
        Demo.predicted(3, "Ana"),
        Demo.shown(3));
    Gate.Predict gap = (Gate.Predict) gate(Demo.moment(Demo.turn(), 1, GAP));
    assertThat(gap.round().opened().turn()).isFalse();
    happen(Demo.predicted(round(), "Ana"));
    assertThat(gate(Demo.moment(Demo.turn(), 1, GAP))).isInstanceOf(Gate.Held.class);
    happen(new LessonEvent.Accepted(T, new Ref("desk-a", 1), released(new Value.Rod(Turn.EIGHTH))));
    Value turned = new Value.Rod(Turn.EIGHTH);
    Moment after = after(2, new Prompt.Tell(Demo.said("key-out")), Map.of(3, turned));
    assertThat(((Gate.Reflect) gate(after)).question()).isEqualTo("Why?");
  }

  @Test
  void nothingIsPredictedThatWasReadSinceTheLastChangeOrIsTheAir() {
    happen(Demo.came("Ana"));
    Moment repeated =
        new Moment(
            Demo.spot("read", 1),
            Demo.measure(),
            GAP,
            0.05,
            Map.of(),
            false,
            true,
            false,
            List.of());
    assertThat(gate(repeated)).isInstanceOf(Gate.Open.class);
    Prompt air =
        new Prompt.Measure(Demo.said("air"), Quantity.HUMIDITY, List.of(), 0, null, null, 1);
    assertThat(gate(Demo.moment(air, 2, null))).isInstanceOf(Gate.Open.class);
  }

  @Test
  void aTurnWaitsForTheTeacherWhoReadsItBack() {
    happen(Demo.came("Ana"));
    Moment turn = Demo.moment(Demo.turn(), 1, GAP);
    predictedBy(turn, "Ana");
    Gate.Held held = (Gate.Held) predictedBy(turn, "Ana");
    assertThat(held.hold().value()).isEqualTo(new Value.Rod(Turn.EIGHTH));
    assertThat(LessonRules.objection(lesson, Demo.resulted(lesson.rounds().get(0).n())))
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
    Moment after = after(2, new Prompt.Tell(Demo.said("look")), Map.of(round(), GAP));
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
    Moment again = Demo.moment(Demo.spot("read", 2), Demo.measure(), GAP, Map.of(), true);
    assertThat(gate(again)).isEqualTo(new Gate.Open(null));
    happen(new LessonEvent.Resulted(T, round(), Demo.gap(0.6)));
    Moment next = Demo.moment(new Prompt.Tell(Demo.said("look")), 3, GAP);
    assertThat(((Gate.Reflect) gate(next)).round().result()).isEqualTo(Demo.gap(0.6));
  }
}
