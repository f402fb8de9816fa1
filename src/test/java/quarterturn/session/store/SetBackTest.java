package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What a lesson turned on a named instrument is undone after class. The instrument is invented. */
class SetBackTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final String NAME = "school-bass";
  private static final String LESSON = "2027-03-01-1-first-turn";

  /** The gap as the rod was found, and how much a whole turn takes of it; both invented. */
  private static final double GAP_MM = 0.90;

  private static final double BY_A_TURN_MM = 0.90;

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));

  /** Where the rod truly stands. */
  private double rod;

  @BeforeEach
  void addInstrument() throws Exception {
    store = Store.at(folder.resolve("data"));
    store.add(
        new Instrument(
            NAME, "bass-34", Style.MEDIUM, null, null, NOON, Instrument.Build.UNKNOWN, Map.of()));
  }

  private Sessions.Opened start(String procedure, @Nullable String lesson, int hours)
      throws Exception {
    Instant at = NOON.plus(Duration.ofHours(hours));
    Sessions sessions = new Sessions(store, null, Clock.fixed(at, ZoneOffset.UTC));
    return sessions.start(
        new Sessions.Wish(procedure, NAME, null, Style.MEDIUM, Role.BEGINNER, lesson));
  }

  private void answer(Bench bench, Answer answer) throws Exception {
    rod += answer instanceof Answer.Turned turned ? turned.turn().turns() : 0;
    bench.answer(answer);
  }

  /** Turns as asked, so many times, and reads what that did. */
  private void turn(@Nullable String lesson, int hours, int times) throws Exception {
    try (Sessions.Opened opened = start("relief", lesson, hours)) {
      Bench bench = opened.bench();
      for (int i = 0; i < times; i++) {
        on(bench);
        answer(bench, new Answer.Turned(((Prompt.TurnRod) bench.prompt()).turn(), Feel.SMOOTH));
      }
      readOnce(bench);
      bench.leave();
    }
  }

  private void readOnce(Bench bench) throws Exception {
    boolean reads = false;
    while (!reads) {
      reads = bench.prompt() instanceof Prompt.Measure;
      bench.answer(ordinary(bench));
    }
  }

  /** The ordinary answers up to a turn, a daily rest or the end. */
  private void on(Bench bench) throws Exception {
    while (!(bench.prompt() instanceof Prompt.TurnRod)
        && !(bench.prompt() instanceof Prompt.Wait wait && wait.rest())
        && !bench.prompt().ended()) {
      bench.answer(ordinary(bench));
    }
  }

  private Answer ordinary(Bench bench) throws Exception {
    Prompt prompt = bench.prompt();
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    } else if (prompt instanceof Prompt.Measure) {
      double gap = Math.round((GAP_MM - BY_A_TURN_MM * rod) * 20) / 20.0;
      return new Answer.Measured(new Bracket(gap, gap + 0.05));
    } else if (prompt instanceof Prompt.Wait wait) {
      bench.setClock(wait.until().isAfter(bench.now()) ? wait.until() : bench.now());
      return new Answer.Waited(null);
    }
    return prompt instanceof Prompt.Write ? new Answer.Wrote("-") : new Answer.Confirmed();
  }

  /** Sets back whatever is asked for; returns the turns. */
  private List<Turn> setBack(Bench bench) throws Exception {
    List<Turn> asked = new ArrayList<>();
    on(bench);
    while (bench.prompt() instanceof Prompt.TurnRod turn) {
      asked.add(turn.turn());
      answer(bench, new Answer.Turned(turn.turn(), Feel.SMOOTH));
      on(bench);
    }
    return asked;
  }

  private static void over(Bench bench, String text) {
    assertWithMessage(bench.prompt().said().text())
        .that(bench.prompt())
        .isInstanceOf(Prompt.Done.class);
    assertThat(bench.prompt().said().text()).contains(text);
  }

  @Test
  void aLessonIsUndoneTheLastTurnFirst() throws Exception {
    turn(LESSON, 0, 2);
    assertThat(rod).isEqualTo(0.375);
    try (Sessions.Opened opened = start("set-back", null, 26)) {
      assertThat(setBack(opened.bench()))
          .containsExactly(new Turn(-0.25), new Turn(-0.125))
          .inOrder();
      over(opened.bench(), "The rod stands where it was found");
      Event.Started started = (Event.Started) store.read(opened.name()).events().get(0);
      assertThat(started.back()).isEqualTo(NOON);
    }
    try (Sessions.Opened again = start("set-back", null, 50)) {
      over(again.bench(), "Nothing is left to set back.");
    }
  }

  @Test
  void whatWasTurnedBeforeTheLessonStays() throws Exception {
    turn(null, 0, 1);
    turn(LESSON, 48, 1);
    turn(LESSON, 75, 1);
    double lesson = rod - 0.125;
    assertThat(lesson).isGreaterThan(0.25);
    try (Sessions.Opened opened = start("set-back", null, 102)) {
      List<Turn> asked = setBack(opened.bench());
      assertThat(asked.stream().mapToDouble(Turn::turns).sum()).isEqualTo(-lesson);
      over(opened.bench(), "The rod stands 1/8 turn tighter than it was found");
    }
  }

  @Test
  void onTheSameDayItRestsFirstAndGoesOnFromThere() throws Exception {
    turn(LESSON, 0, 2);
    String name;
    try (Sessions.Opened opened = start("set-back", null, 2)) {
      name = opened.name();
      on(opened.bench());
      assertThat(((Prompt.Wait) opened.bench().prompt()).rest()).isTrue();
      opened.bench().leave();
    }
    Instant then = NOON.plus(Duration.ofHours(30));
    Sessions later = new Sessions(store, null, Clock.fixed(then, ZoneOffset.UTC));
    try (Sessions.Opened opened = later.resume(name)) {
      on(opened.bench());
      opened.bench().answer(new Answer.Waited(null));
      assertThat(setBack(opened.bench())).hasSize(2);
      over(opened.bench(), "The rod stands where it was found");
    }
  }

  @Test
  void aTurnThatWasMadeInPartIsGoneOnWith() throws Exception {
    turn(LESSON, 0, 1);
    try (Sessions.Opened opened = start("set-back", null, 26)) {
      on(opened.bench());
      answer(opened.bench(), new Answer.Turned(new Turn(-0.0625), Feel.SMOOTH));
      readOnce(opened.bench());
      opened.bench().leave();
    }
    try (Sessions.Opened opened = start("set-back", null, 28)) {
      assertThat(setBack(opened.bench())).containsExactly(new Turn(-0.0625));
      over(opened.bench(), "where it was found");
    }
  }

  @Test
  void aTurnThatNobodyIsSureOfIsNotUndone() throws Exception {
    try (Sessions.Opened opened = start("relief", LESSON, 0)) {
      on(opened.bench());
      answer(opened.bench(), new Answer.Turned(Turn.EIGHTH, Feel.SMOOTH));
      on(opened.bench());
      assertThat(opened.bench().prompt()).isInstanceOf(Prompt.TurnRod.class);
    }
    try (Sessions.Opened opened = start("set-back", null, 52)) {
      assertThat(setBack(opened.bench())).containsExactly(new Turn(-0.125));
    }
  }

  @Test
  void aSignToStopHolds() throws Exception {
    turn(LESSON, 0, 1);
    try (Sessions.Opened opened = start("set-back", null, 26)) {
      on(opened.bench());
      answer(opened.bench(), new Answer.Turned(new Turn(-0.125), Feel.NOISE));
      on(opened.bench());
      assertThat(opened.bench().prompt()).isInstanceOf(Prompt.HandOver.class);
    }
    try (Sessions.Opened opened = start("set-back", null, 52)) {
      assertThat(setBack(opened.bench())).isEmpty();
    }
  }
}
