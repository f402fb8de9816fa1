package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;
import static quarterturn.lesson.Demo.T;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PastPace;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.Limits;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

class PaceTest {
  private static final Pace ESTIMATED = Pace.ESTIMATED;

  /** Invented. */
  private static final Limits.Clocks CLOCKS =
      new Limits.Clocks(Duration.ofMinutes(5), Duration.ofDays(300));

  @TempDir Path folder;

  private static Instant at(int minute) {
    return T.plus(Duration.ofMinutes(minute));
  }

  /** A bench that takes two minutes a step, was left for a day, and is over. */
  private static List<LessonEvent> bench() {
    List<LessonEvent> events = new ArrayList<>(List.of(new LessonEvent.Joined(at(0), "left")));
    for (int step = 1; step <= 10; step++) {
      events.add(new LessonEvent.Stepped(at(2 * step), Demo.spot("tune", step)));
    }
    events.add(new LessonEvent.Joined(at(1440), "left"));
    events.add(new LessonEvent.Accepted(at(1440), new Ref("desk", 1), new Order.End()));
    return events;
  }

  @Test
  void itIsMeasuredAtFinishedBenchesAndElseEstimated() {
    Pace measured = Pace.measured(List.of(bench(), List.of(Demo.came("Ana"))), CLOCKS);
    assertThat(measured.step()).isEqualTo(Duration.ofMinutes(2));
    assertThat(measured.answer()).isEqualTo(Duration.ofSeconds(40));
    assertThat(measured.words()).isEqualTo("as measured at 1 bench");
    List<LessonEvent> unfinished = bench().subList(0, 11);
    assertThat(Pace.measured(List.of(unfinished), CLOCKS)).isEqualTo(ESTIMATED);
    assertThat(ESTIMATED.words()).startsWith("estimated, a minute a step");
  }

  @Test
  void aClockThatWasSetMeanwhileTookNoTime() {
    List<LessonEvent> leapt = new ArrayList<>(bench().subList(0, 6));
    for (LessonEvent event : bench().subList(6, 11)) {
      LessonEvent.Stepped step = (LessonEvent.Stepped) event;
      leapt.add(new LessonEvent.Stepped(step.at().plus(Duration.ofDays(4000)), step.spot()));
    }
    leapt.addAll(bench().subList(11, 13));
    // The step at which it leapt counts for nothing.
    assertThat(Pace.measured(List.of(leapt), CLOCKS).step()).isEqualTo(Duration.ofSeconds(108));
  }

  @Test
  void lessonsBesideAPlanTellItsPace() throws Exception {
    Path before = Files.createDirectory(folder.resolve("before"));
    Files.writeString(before.resolve(LessonFolder.PLAN), "lesson: a");
    WriterLog.Header header = new WriterLog.Header("a", "left", WriterLog.Part.BENCH);
    try (WriterFile file = WriterFile.create(before, header)) {
      file.append(bench());
    }
    assertThat(PastPace.near(folder.resolve("next"), CLOCKS).benches()).isEqualTo(1);
    assertThat(PastPace.near(folder, CLOCKS)).isEqualTo(ESTIMATED);
    assertThat(PastPace.near(folder.resolve("no/where"), CLOCKS)).isEqualTo(ESTIMATED);
  }

  private LessonTime time(String neck) throws Exception {
    Clock clock = Clock.fixed(T, ZoneOffset.UTC);
    Sessions sessions = new Sessions(Store.at(folder), null, clock);
    PlanChecks checks = new PlanChecks(sessions, ESTIMATED);
    return LessonTime.of(checks.plan("a", Map.of(PlanPart.NECKS, neck)), sessions);
  }

  @Test
  void aPlanIsRehearsedForItsTime() throws Exception {
    LessonTime time = time("too-much");
    assertThat(time.turns()).isEqualTo(2);
    assertThat(time.readings()).isEqualTo(1);
    assertThat(time.waits()).isEqualTo(Duration.ZERO);
    String some = time.words(Questioning.SOME, ESTIMATED);
    assertThat(some).startsWith("It takes about 40 minutes with two students at a bench, ");
    Pace slow = Pace.measured(List.of(bench()), CLOCKS);
    assertThat(time.lasts(2, Questioning.SOME, slow)).isEqualTo(Duration.ofMinutes(80));
    assertThat(time.lasts(8, Questioning.FEW, slow))
        .isLessThan(time.lasts(8, Questioning.SOME, slow));
    // On a real neck the waits are waited for.
    assertThat(time("real").waits()).isEqualTo(Duration.ofMinutes(30));
  }
}
