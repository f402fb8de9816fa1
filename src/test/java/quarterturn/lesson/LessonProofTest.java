package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;
import static quarterturn.lesson.Demo.BENCH;
import static quarterturn.lesson.Demo.T;
import static quarterturn.lesson.Demo.blindRead;
import static quarterturn.lesson.Demo.came;
import static quarterturn.lesson.Demo.opened;
import static quarterturn.lesson.Demo.predicted;
import static quarterturn.lesson.Demo.resulted;
import static quarterturn.lesson.Demo.shown;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.store.WriterLog;

class LessonProofTest {
  private static final LessonEvent UNVEILED = new LessonEvent.Unveiled(T, 2);
  private static final LessonEvent STOPPED = new LessonEvent.Stopped(T, null);

  private static void refuted(int at, String why, LessonEvent... events) {
    List<LessonProof.Objection> found = LessonProof.of(Demo.bench(BENCH, events), List.of());
    assertThat(found).isNotEmpty();
    assertThat(found.get(0).event()).isEqualTo(new Ref(BENCH, at));
    assertThat(found.get(0).why()).contains(why);
  }

  @Test
  void aGoodLogIsProven() {
    WriterLog good =
        Demo.bench(
            BENCH,
            came("Ana"),
            opened("read", 1, true),
            predicted(2, "Ana"),
            shown(2),
            blindRead(2, "Ana"),
            UNVEILED,
            resulted(2),
            STOPPED);
    assertThat(LessonProof.of(good, List.of(good))).isEmpty();
  }

  @Test
  void badLogsAreRefuted() {
    LessonEvent open = opened("read", 1, false);
    LessonEvent blind = opened("read", 1, true);
    refuted(3, "Not every prediction", came("Ana"), open, shown(2));
    refuted(5, "Ben", came("Ana"), came("Ben"), open, predicted(3, "Ana"), shown(3));
    refuted(5, "Ben", came("Ana"), open, predicted(2, "Ana"), came("Ben"), shown(2));
    refuted(3, "before the predictions", came("Ana"), open, resulted(2));
    refuted(4, "before the predictions", came("Ana"), open, predicted(2, "Ana"), resulted(2));
    refuted(3, "before the predictions", came("Ana"), blind, blindRead(2, "Ana"));
    refuted(
        5,
        "was shown already",
        came("Ana"),
        open,
        predicted(2, "Ana"),
        shown(2),
        predicted(2, "Ana"));
    refuted(4, "is locked", came("Ana"), open, predicted(2, "Ana"), predicted(2, "Ana"));
    refuted(5, "hidden readings", came("Ana"), blind, predicted(2, "Ana"), shown(2), UNVEILED);
    refuted(
        8,
        "Ben",
        came("Ana"),
        blind,
        predicted(2, "Ana"),
        came("Ben"),
        predicted(2, "Ben"),
        shown(2),
        blindRead(2, "Ana"),
        UNVEILED);
    refuted(
        6,
        "hidden until all",
        came("Ana"),
        blind,
        predicted(2, "Ana"),
        shown(2),
        blindRead(2, "Ana"),
        resulted(2));
    refuted(5, "has stopped", came("Ana"), open, predicted(2, "Ana"), STOPPED, shown(2));
    refuted(2, "no such", came("Ana"), shown(9));
    refuted(
        4,
        "no result",
        came("Ana"),
        open,
        predicted(2, "Ana"),
        new LessonEvent.Reflected(T, 2, "Ana", "x", null, null, false));
    refuted(2, "gives no orders", came("Ana"), Demo.release(new Ref(BENCH, 1), Value.NONE));
  }

  @Test
  void aReleaseThatNoDeskGaveIsRefuted() {
    Order order = new Order.Release(new Ref(BENCH, 1), Value.NONE);
    LessonEvent accepted = new LessonEvent.Accepted(T, new Ref("desk-a", 1), order);
    WriterLog bench = Demo.bench(BENCH, STOPPED, accepted);
    WriterLog gave = Demo.desk("desk-a", Demo.release(new Ref(BENCH, 1), Value.NONE));
    WriterLog other = Demo.desk("desk-a", new LessonEvent.Ordered(T, BENCH, new Order.Hold("no")));
    assertThat(LessonProof.of(bench, List.of(bench, gave))).isEmpty();
    assertThat(LessonProof.of(bench, List.of(bench))).isEmpty();
    assertThat(LessonProof.of(bench, List.of(bench, other)).get(0).why()).contains("no such order");
    refuted(3, "answered already", STOPPED, accepted, accepted);
    refuted(1, "not kept by that", accepted);
  }
}
