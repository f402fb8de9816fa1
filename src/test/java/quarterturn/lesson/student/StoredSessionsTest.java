package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.condition.Feel;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;

/** A bench in a lesson on an invented neck, broken off and taken up again. */
class StoredSessionsTest {
  private static final String SEEN = "What the gauges show: ";
  private static final Instant T = Instant.parse("2027-03-01T09:00:00Z");
  private static final Clock CLOCK = Clock.fixed(T, ZoneOffset.UTC);

  @TempDir Path folder;
  private Path in = Path.of("");
  private @Nullable LessonSession open;

  private static Plan plan(boolean everyTurn, boolean blind) {
    return new Plan(
        "2027-03-01-1-demo",
        "Demo",
        List.of("relief-check", "relief"),
        List.of(new Plan.Setup(null, "bass-34", NamedNeck.TOO_MUCH, 7)),
        Level.OWN,
        everyTurn,
        List.of(),
        blind,
        List.of(),
        Map.of(),
        Questioning.SOME);
  }

  private LessonSession join(Plan plan) throws Exception {
    close();
    Path file = in.resolve("left.jsonl");
    WriterLog.Header header = new WriterLog.Header(plan.lesson(), "left", WriterLog.Part.BENCH);
    boolean again = Files.exists(file);
    WriterFile writer = again ? WriterFile.open(in, "left") : WriterFile.create(in, header);
    LessonBench bench = LessonBench.at(writer, plan.level());
    bench.record(new LessonEvent.Joined(T, "left"));
    if (!again) {
      bench.record(new LessonEvent.Came(T, "Ana"));
    }
    Sessions sessions = new Sessions(Store.at(in.resolve("left")), null, CLOCK);
    Plan.Setup setup = requireNonNull(plan.forBench("left"));
    LessonSession session =
        new LessonSession(bench, plan, in, CLOCK, new StoredSessions(sessions, plan, setup));
    open = session;
    return session;
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
      open = null;
    }
  }

  private Path folder(String name) throws Exception {
    in = Files.createDirectories(folder.resolve(name));
    return in;
  }

  /** Does what comes first, and says what was open then. */
  private static Prompt opened(LessonSession session) throws Exception {
    while (true) {
      session.look();
      Gate gate = session.gate();
      if (gate instanceof Gate.Open) {
        return session.prompt();
      }
      assertThat(session.prompt().said().notes()).isEmpty();
      assertThat(session.prompt().said().text()).isEqualTo("Something comes before this step.");
      if (gate instanceof Gate.Predict predict) {
        Prediction guess = new Prediction(Direction.LESS, 0.5, "a guess", false);
        session.predict(predict.round().n(), "Ana", guess);
      } else if (gate instanceof Gate.ReadBlind read) {
        session.read(read.round(), "Ana", requireNonNull(session.leaves(read.round(), "Ana")));
      } else if (gate instanceof Gate.Reflect reflect) {
        String answer = reflect.question() == null ? null : "less";
        session.reflect(reflect.round(), "Ana", "so it was", answer, false);
      } else {
        throw new AssertionError("nobody keeps this bench: " + gate);
      }
    }
  }

  private static Answer answer(Prompt prompt) {
    if (prompt instanceof Prompt.Measure measure) {
      for (String note : prompt.said().notes()) {
        if (note.startsWith(SEEN)) {
          return new Answer.Measured(
              BracketParser.parse(note.substring(SEEN.length()).replaceFirst("\\.$", ""), 0.05));
        }
      }
      return measure.quantity().bracket() ? new Answer.CannotMeasure() : new Answer.Value(50);
    } else if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    } else if (prompt instanceof Prompt.TurnRod turn) {
      return new Answer.Turned(turn.turn(), Feel.SMOOTH);
    } else if (prompt instanceof Prompt.Wait) {
      return new Answer.Waited(null);
    }
    return prompt instanceof Prompt.Write ? new Answer.Wrote("-") : new Answer.Confirmed();
  }

  /** Plays to the end, broken off after each {@code every} answers; what was shown, in order. */
  private List<Prompt> played(Plan plan, int every) throws Exception {
    List<Prompt> shown = new ArrayList<>();
    LessonSession session = join(plan);
    while (true) {
      Prompt prompt = opened(session);
      shown.add(prompt);
      if (prompt.ended()) {
        if (!session.next()) {
          return shown;
        }
      } else {
        session.answer(answer(prompt));
      }
      if (shown.size() % every == 0) {
        session = join(plan);
      }
    }
  }

  private List<WriterLog> logs() throws Exception {
    return LessonFolder.read(in).logs();
  }

  private void proven() throws Exception {
    for (WriterLog log : logs()) {
      if (requireNonNull(log.header()).role() == WriterLog.Part.BENCH) {
        assertThat(LessonProof.of(log, logs())).isEmpty();
      }
    }
  }

  @Test
  void aSimulatedNeckIsTheSameAfterEveryBreak() throws Exception {
    Plan plan = plan(false, true);
    folder("whole");
    List<Prompt> whole = played(plan, Integer.MAX_VALUE);
    proven();
    folder("broken");
    assertThat(played(plan, 5)).isEqualTo(whole);
    proven();
    assertThat(whole.stream().filter(p -> p instanceof Prompt.TurnRod).count()).isAtLeast(1L);
    assertThat(whole.get(whole.size() - 1)).isInstanceOf(Prompt.Done.class);
  }

  private LessonSession toReading(Plan plan) throws Exception {
    folder("one");
    LessonSession session = join(plan);
    while (true) {
      Prompt prompt = opened(session);
      if (prompt instanceof Prompt.Measure measure && measure.quantity().bracket()) {
        return session;
      }
      if (prompt instanceof Prompt.Wait wait) {
        session.setClock(wait.until());
      }
      session.answer(answer(prompt));
    }
  }

  @Test
  void anAnswerThatTheLessonDidNotHearOfIsReadFromTheSession() throws Exception {
    Plan plan = plan(false, false);
    LessonSession session = toReading(plan);
    session.answer(answer(session.prompt()));
    Value result = requireNonNull(session.lesson().lastRound()).result();
    assertThat(result).isInstanceOf(Value.Gap.class);
    close();
    Path file = in.resolve("left.jsonl");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    while (!lines.get(lines.size() - 1).contains("\"event\":\"shown\"")) {
      lines.remove(lines.size() - 1);
    }
    Files.write(file, lines);
    session = join(plan);
    assertThat(session.gate()).isInstanceOf(Gate.Reflect.class);
    assertThat(requireNonNull(session.lesson().lastRound()).result()).isEqualTo(result);
    proven();
  }

  @Test
  void aReadingThatIsGivenAgainCountsInPlaceOfTheFirst() throws Exception {
    LessonSession session = toReading(plan(false, false));
    int rounds = session.lesson().rounds().size();
    session.answer(new Answer.Measured(new Bracket(0.2, 0.25)));
    assertThat(session.gate()).isInstanceOf(Gate.Reflect.class);
    session.answer(new Answer.Correct());
    assertThat(session.gate()).isInstanceOf(Gate.Open.class);
    session.answer(new Answer.Measured(new Bracket(0.7, 0.75)));
    Gate.Reflect reflect = (Gate.Reflect) session.gate();
    assertThat(reflect.round().result()).isEqualTo(new Value.Gap(new Bracket(0.7, 0.75)));
    assertThat(session.lesson().rounds()).hasSize(rounds);
    proven();
  }

  @Test
  void whoeverStopsKeepsTheBenchUntilABoardReleasesItOnce() throws Exception {
    Plan plan = plan(false, false);
    LessonSession session = toReading(plan);
    Answer reading = answer(session.prompt());
    session.stop("the string creaks");
    Gate.Stopped stopped = (Gate.Stopped) session.gate();
    assertThat(stopped.stop().what()).isEqualTo("the string creaks");
    RefusedException e = assertThrows(RefusedException.class, () -> session.answer(reading));
    assertThat(e).hasMessageThat().contains("has stopped");
    release("desk-a", plan, stopped.stop());
    release("desk-b", plan, stopped.stop());
    session.look();
    assertThat(session.gate()).isInstanceOf(Gate.Open.class);
    session.answer(reading);
    WriterLog bench =
        logs().stream().filter(l -> writer(l).equals("left")).findFirst().orElseThrow();
    assertThat(
            bench.events().stream()
                .filter(event -> event instanceof LessonEvent.Declined)
                .map(event -> ((LessonEvent.Declined) event).why()))
        .containsExactly(Refusal.ALREADY_RELEASED);
    proven();
  }

  private static String writer(WriterLog log) {
    return requireNonNull(log.header()).writer();
  }

  private void release(String desk, Plan plan, Keep keep) throws Exception {
    WriterLog.Header header = new WriterLog.Header(plan.lesson(), desk, WriterLog.Part.BOARD);
    try (WriterFile file = WriterFile.create(in, header)) {
      Order order = new Order.Release(keep.ref(), keep.value());
      // Ten minutes off: no clock decides.
      file.append(List.of(new LessonEvent.Ordered(T.minusSeconds(600), "left", order)));
    }
  }

  @Test
  void aPredictionOnARealNeckOutlivesABreak() throws Exception {
    Plan.Setup real = new Plan.Setup(null, "bass-34", null, 1);
    Plan plan =
        new Plan(
            "2027-03-01-1-demo",
            "Demo",
            List.of("relief-check"),
            List.of(real),
            Level.WORKED,
            false,
            List.of(),
            false,
            List.of(),
            Map.of(),
            Questioning.SOME);
    LessonSession session = toReading(plan);
    int rounds = session.lesson().rounds().size();
    session = join(plan);
    Prompt back = opened(session);
    assertThat(back).isInstanceOf(Prompt.Tell.class);
    assertThat(back.said().text()).contains("Welcome back");
    session.answer(new Answer.Confirmed());
    assertThat(session.gate()).isInstanceOf(Gate.Open.class);
    assertThat(session.prompt()).isInstanceOf(Prompt.Measure.class);
    session.answer(new Answer.Measured(new Bracket(0.35, 0.4)));
    Gate.Reflect reflect = (Gate.Reflect) session.gate();
    assertThat(reflect.round().result()).isEqualTo(new Value.Gap(new Bracket(0.35, 0.4)));
    assertThat(session.lesson().rounds()).hasSize(rounds);
    while (!opened(session).ended()) {
      Prompt prompt = session.prompt();
      session.answer(
          prompt instanceof Prompt.Measure m && m.quantity().bracket()
              ? new Answer.Measured(new Bracket(0.35, 0.4))
              : answer(prompt));
    }
    session = join(plan);
    assertThat(opened(session).ended()).isTrue();
    assertThat(session.next()).isFalse();
    proven();
  }

  @Test
  void aTurnIsHeldUntilItIsReadBack() throws Exception {
    Plan plan = plan(true, false);
    folder("held");
    LessonSession session = join(plan);
    Keep hold = null;
    while (hold == null) {
      if (session.gate() instanceof Gate.Held held) {
        hold = held.hold();
      } else if (session.gate() instanceof Gate.Predict predict
          && session.coming() instanceof Prompt.TurnRod) {
        Prediction guess = new Prediction(Direction.MORE, 0.125, "too large", false);
        session.predict(predict.round().n(), "Ana", guess);
      } else {
        Prompt prompt = opened(session);
        if (!prompt.ended()) {
          session.answer(answer(prompt));
        } else {
          assertThat(session.next()).isTrue();
        }
      }
    }
    assertThat(hold.value()).isInstanceOf(Value.Rod.class);
    assertThat(session.prompt()).isInstanceOf(Prompt.Tell.class);
    release("desk", plan, hold);
    session = join(plan);
    session.look();
    assertThat(session.gate()).isInstanceOf(Gate.Open.class);
    assertThat(session.prompt()).isInstanceOf(Prompt.TurnRod.class);
    proven();
  }
}
