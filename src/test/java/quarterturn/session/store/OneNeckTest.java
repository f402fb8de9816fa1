package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Due;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.SessionRecord;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Several sessions on one neck count each other's turns. The instrument is invented. */
class OneNeckTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final String NAME = "practice-bass";
  private static final Sessions.Wish WISH =
      new Sessions.Wish("relief", NAME, null, Style.MEDIUM, Role.BEGINNER);

  @TempDir Path folder;
  private Sessions sessions = new Sessions(Store.at(Path.of("unset")), null, Clock.systemUTC());

  @BeforeEach
  void addInstrument() throws Exception {
    Store store = Store.at(folder.resolve("data"));
    store.add(
        new Instrument(
            NAME, "bass-34", Style.MEDIUM, null, null, NOON, Instrument.Build.UNKNOWN, Map.of()));
    sessions = new Sessions(store, null, Clock.fixed(NOON, ZoneOffset.UTC));
  }

  @Test
  void aSessionLeftOpenLearnsOfTheTurnsOfALaterOne() throws Exception {
    String first;
    try (Sessions.Opened opened = sessions.start(WISH)) {
      first = opened.name();
    }
    try (Sessions.Opened opened = sessions.start(WISH)) {
      turnAHalf(opened.bench());
    }
    try (Sessions.Opened opened = sessions.resume(first)) {
      assertThat(opened.bench().prompt().said().text()).contains("rod tightened 1/8 turn");
      assertThat(opened.bench().overview().today()).isEqualTo(new Turn(0.5));
      // Of the half turn, a sixteenth back and forth freed the nut.
      assertThat(opened.bench().overview().net()).isEqualTo(new Turn(0.375));
      toTurn(opened.bench());
      assertThat(((Prompt.Wait) opened.bench().prompt()).rest()).isTrue();
    }
  }

  @Test
  void aTurnAskedForWhenASessionWasLeftMayHaveBeenMade() throws Exception {
    try (Sessions.Opened opened = sessions.start(WISH)) {
      toTurn(opened.bench());
      assertThat(((Prompt.TurnRod) opened.bench().prompt()).turn()).isEqualTo(Turn.EIGHTH);
      opened.bench().leave();
    }
    try (Sessions.Opened opened = sessions.start(WISH)) {
      // Freeing it moves it by as much again.
      assertThat(opened.bench().overview().today()).isEqualTo(Turn.QUARTER);
    }
  }

  @Test
  void aDiscardedSessionIsNeverOfferedAgainAndItsTurnsCount() throws Exception {
    String name;
    Turn today;
    try (Sessions.Opened opened = sessions.start(WISH)) {
      name = opened.name();
      toTurn(opened.bench());
      opened.bench().answer(new Answer.Turned(Turn.EIGHTH, Feel.SMOOTH));
      assertThat(assertThrows(IOException.class, () -> sessions.discard(name)))
          .hasMessageThat()
          .contains("is open in another window");
      today = opened.bench().overview().today();
    }
    assertThat(today.turns()).isGreaterThan(0.0);
    assertThat(sessions.dues(NOON).stream().map(Due::resumes)).contains(name);
    String standing = sessions.standing(name);
    assertThat(standing).isEqualTo("rod turned, strings not yet back at pitch");
    assertThat(sessions.discard(name)).isEqualTo(standing);
    assertThat(sessions.store().sessions().get(0).unfinished()).isFalse();
    assertThat(sessions.store().sessions().get(0).discarded()).isAtLeast(NOON);
    // The neck is still to be read a day after its rod was turned.
    List<Due> dues = sessions.dues(NOON);
    assertThat(dues.stream().map(Due::why)).containsExactly(Due.Why.DAY, Due.Why.SEASON);
    assertThat(dues.get(0).come(NOON)).isFalse();
    assertThat(assertThrows(RecordMismatchException.class, () -> sessions.resume(name)))
        .hasMessageThat()
        .isEqualTo("this session was discarded");
    assertThrows(RecordMismatchException.class, () -> sessions.discard(name));
    try (Sessions.Opened opened = sessions.start(WISH)) {
      assertThat(opened.bench().overview().today()).isEqualTo(today);
    }
  }

  @Test
  void aTurnAskedForInADiscardedSessionMayHaveBeenMade() throws Exception {
    String name;
    try (Sessions.Opened opened = sessions.start(WISH)) {
      name = opened.name();
      toTurn(opened.bench());
    }
    assertThat(sessions.discard(name)).contains("in the middle of a rod turn, rod tightened 1/8");
    try (Sessions.Opened opened = sessions.start(WISH)) {
      assertThat(opened.bench().overview().today()).isEqualTo(Turn.QUARTER);
    }
  }

  @Test
  void aStopInADiscardedSessionHolds() {
    List<Event> events =
        List.of(
            Samples.started(0, "practice-bass"),
            new Event.Turned(NOON, "turn", Turn.EIGHTH, Feel.SLIPPED),
            new Event.Discarded(NOON, "rod turned"));
    SessionRecord record =
        SessionRecord.of("a-1", events, ShippedRules.LIMITS, EngineQuestions.KIND);
    assertThat(Objects.requireNonNull(record).stops()).hasSize(1);
    assertThat(record.turns()).hasSize(1);
  }

  @Test
  void oneNeckIsInOneOpenSessionAtATime() throws Exception {
    String name;
    try (Sessions.Opened opened = sessions.start(WISH)) {
      name = opened.name();
      IOException refused = assertThrows(IOException.class, () -> sessions.start(WISH));
      assertThat(refused).hasMessageThat().contains("open in another window");
    }
    try (Sessions.Opened other = sessions.start(WISH)) {
      IOException refused = assertThrows(IOException.class, () -> sessions.resume(name));
      assertThat(refused).hasMessageThat().contains("a session on practice-bass is open");
      assertThat(other.name()).isNotEqualTo(name);
    }
    sessions.resume(name).close();
  }

  /** Turns what is asked for until the day's half turn is used. */
  private static void turnAHalf(Bench bench) throws Exception {
    toTurn(bench);
    while (bench.prompt() instanceof Prompt.TurnRod turn) {
      bench.answer(new Answer.Turned(turn.turn(), Feel.SMOOTH));
      toTurn(bench);
    }
    assertThat(bench.overview().today()).isEqualTo(new Turn(0.5));
  }

  /** The ordinary answer and a gap that shrinks with each turn, up to a turn or the daily rest. */
  private static void toTurn(Bench bench) throws Exception {
    while (!(bench.prompt() instanceof Prompt.TurnRod)
        && !(bench.prompt() instanceof Prompt.Wait wait && wait.rest())) {
      bench.answer(ordinary(bench));
    }
  }

  private static Answer ordinary(Bench bench) throws Exception {
    Prompt prompt = bench.prompt();
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    } else if (prompt instanceof Prompt.Measure measure) {
      double gap = Math.round((2.0 - bench.overview().net().turns()) * 20) / 20.0;
      return measure.quantity().bracket()
          ? new Answer.Measured(new Bracket(gap, gap + 0.05))
          : new Answer.Value(50);
    } else if (prompt instanceof Prompt.Wait wait) {
      bench.setClock(wait.until().isAfter(bench.now()) ? wait.until() : bench.now());
      return new Answer.Waited(null);
    }
    return prompt instanceof Prompt.Write ? new Answer.Wrote("-") : new Answer.Confirmed();
  }
}
