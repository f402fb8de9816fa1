package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.OrdinaryAnswers;
import quarterturn.command.SampleFolder;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Questioning;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.engine.Answers;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.Openings;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** An unfinished session whose procedure was changed goes on in a new one. All is invented. */
@Tag("slow")
class ChangedProcedureTest {
  private static final String MID_TURN = "2027-03-01-house-relief-gtp9";
  private static final String NAMED = "2027-03-01-relief-c15s";
  private static final String UNNAMED = "2027-03-01-relief-257j";
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-01T15:30:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private SampleFolder samples = new SampleFolder(Path.of("unset"));

  @BeforeEach
  void copy() throws Exception {
    samples = SampleFolder.copied(folder);
  }

  private Sessions sessions() {
    return new Sessions(samples.store(), samples.in("own"), CLOCK);
  }

  /** Gives a step another name, so that a record that tells of it does not fit any more. */
  private void rename(String procedure, String step, String name) throws Exception {
    if (!procedure.equals("house-relief")) {
      // What comes with the program turns more than these limits let it.
      Files.deleteIfExists(samples.in("own/safety/limits.yaml"));
    }
    Path file = samples.in("own/procedures/" + procedure + ".yaml");
    Path from = Files.exists(file) ? file : Path.of("procedures/" + procedure + ".yaml");
    Files.writeString(file, Files.readString(from).replaceAll("\\b" + step + "\\b", name));
  }

  private Event.Ended ended(String session) throws Exception {
    List<Event> events = samples.store().read(session).events();
    return (Event.Ended) events.get(events.size() - 1);
  }

  @Test
  void itsTurnsAndReadingsAreSaidAndCarriedOn() throws Exception {
    rename("house-relief", "slacken", "let-down");
    try (Sessions.Opened opened = Openings.resumeAnother(sessions(), MID_TURN)) {
      assertThat(opened.name()).isNotEqualTo(MID_TURN);
      Bench bench = opened.bench();
      String said = bench.prompt().said().text();
      assertThat(said)
          .contains("in the middle of a rod turn, rod tightened 1/16 turn, which counts as made");
      assertThat(said).contains("relief last read as 0.50 to 0.55 mm, before the last turn");
      assertThat(said).contains("The procedure was changed since session " + MID_TURN);
      assertThat(said).contains("rod tightened 1/8 turn, rod tightened 1/16 turn");
      // As much again was turned in an earlier session on the same instrument.
      assertThat(bench.overview().net()).isEqualTo(new Turn(0.375));
      assertThat(bench.overview().today()).isEqualTo(new Turn(0.1875));
      assertThat(bench.overview().instrument()).isEqualTo("house-bass");
      Event.Started started = (Event.Started) samples.events(opened.name()).get(0);
      assertThat(started.style()).isEqualTo(Style.MEDIUM);
      assertThat(started.before()).hasSize(1);
      assertThat(started.before().get(0).since()).containsExactly("rod");
      freshReadingBeforeTheNextTurn(bench);
    }
    Event.Ended ended = ended(MID_TURN);
    assertThat(ended.outcome()).isEqualTo("procedure-changed");
    assertThat(ended.handOver()).isFalse();
    RecordMismatchException over =
        assertThrows(RecordMismatchException.class, () -> sessions().resume(MID_TURN));
    assertThat(over).hasMessageThat().contains("has ended");
  }

  /** Its last turn gave a sign to stop, and the program was closed before it could say so. */
  @Test
  void aSignToStopHoldsInTheNewOneToo() throws Exception {
    List<Event> events = samples.events(MID_TURN);
    Event.Offered asked = Objects.requireNonNull(PastTurns.open(events));
    try (Journal journal = samples.store().open(MID_TURN)) {
      journal.append(
          List.of(new Event.Turned(CLOCK.instant(), asked.step(), asked.turn(), Feel.NOISE)));
    }
    rename("house-relief", "slacken", "let-down");
    try (Sessions.Opened opened = Openings.resume(sessions(), MID_TURN, "another", "leave")) {
      Bench bench = opened.bench();
      while (!bench.prompt().ended()) {
        assertThat(bench.prompt()).isNotInstanceOf(Prompt.TurnRod.class);
        bench.answer(OrdinaryAnswers.to(bench, new Bracket(0.60, 0.65)));
      }
      assertThat(((Prompt.HandOver) bench.prompt()).outcome()).isEqualTo("noise");
    }
  }

  private static void freshReadingBeforeTheNextTurn(Bench bench) throws Exception {
    boolean read = false;
    while (!(bench.prompt() instanceof Prompt.TurnRod)) {
      read |= bench.prompt() instanceof Prompt.Measure;
      bench.answer(OrdinaryAnswers.to(bench, new Bracket(0.60, 0.65)));
    }
    assertThat(read).isTrue();
  }

  @Test
  void whatItsTurnsLeaveOfTheDayHoldsInTheNewOne() throws Exception {
    // Three sixteenths are made; the day's quarter of the user's own limits leaves one more.
    rename("house-relief", "slacken", "let-down");
    try (Sessions.Opened opened = Openings.resumeAnother(sessions(), MID_TURN)) {
      Bench bench = opened.bench();
      int turns = 0;
      while (!(bench.prompt() instanceof Prompt.Wait wait && wait.rest())) {
        assertThat(bench.prompt().ended()).isFalse();
        turns += bench.prompt() instanceof Prompt.TurnRod ? 1 : 0;
        double gap = 0.9 - 0.1 * turns;
        bench.answer(OrdinaryAnswers.to(bench, new Bracket(gap, gap + 0.05)));
      }
      assertThat(turns).isEqualTo(1);
      assertThat(bench.overview().today()).isEqualTo(Turn.QUARTER);
    }
  }

  @Test
  void itHoldsAfterEveryFurtherBreakAndChange() throws Exception {
    rename("relief", "prepare", "lay-out");
    rename("relief", "detune", "let-down");
    for (String session : List.of(NAMED, UNNAMED)) {
      String name = session;
      for (int i = 0; i < 2; i++) {
        try (Sessions.Opened opened = Openings.resumeAnother(sessions(), name)) {
          assertThat(opened.name().equals(name)).isEqualTo(i > 0);
          assertThat(opened.bench().prompt().said().text()).contains("in the middle of a rod turn");
          assertThat(opened.bench().overview().net()).isEqualTo(new Turn(0.375));
          assertThat(opened.bench().overview().today()).isEqualTo(new Turn(0.375));
          name = opened.name();
          opened.bench().leave();
        }
      }
      try (Sessions.Opened opened = Openings.resumeAnother(sessions(), name)) {
        // What is shown after a break, the hazards, and the first step.
        for (int i = 0; i < 3; i++) {
          opened.bench().answer(new Answer.Confirmed());
        }
        opened.bench().leave();
      }
      rename("relief", "lay-out", "get-ready");
      try (Sessions.Opened opened = Openings.resumeAnother(sessions(), name)) {
        assertThat(opened.name()).isNotEqualTo(name);
        assertThat(opened.bench().overview().net()).isEqualTo(new Turn(0.375));
        assertThat(opened.bench().overview().kind()).isNotNull();
      }
      rename("relief", "get-ready", "lay-out");
    }
  }

  @Test
  void theDayIsNotCountedTwice() throws Exception {
    rename("relief", "prepare", "lay-out");
    sessions().resume(NAMED).close();
    Sessions.Wish wish =
        new Sessions.Wish("relief", "turn-bass", null, Style.MEDIUM, Role.BEGINNER);
    try (Sessions.Opened opened = sessions().start(wish)) {
      assertThat(opened.bench().overview().today()).isEqualTo(new Turn(0.375));
    }
  }

  @Test
  void aCalledProcedureThatWasChangedIsNoRefusalEither() throws Exception {
    rename("intake", "complaint", "complaint");
    String name;
    Sessions.Wish wish = new Sessions.Wish("setup", null, "bass-34", Style.MEDIUM, Role.BEGINNER);
    try (Sessions.Opened opened = sessions().start(wish)) {
      while (!(opened.bench().prompt() instanceof Prompt.Write)) {
        opened.bench().answer(OrdinaryAnswers.to(opened.bench(), new Bracket(0.6, 0.65)));
      }
      opened.bench().leave();
      name = opened.name();
    }
    rename("intake", "prepare", "lay-out");
    try (Sessions.Opened opened = sessions().resume(name)) {
      assertThat(opened.name()).isNotEqualTo(name);
      assertThat(opened.bench().prompt().said().text()).contains("rod not turned");
    }
  }

  @Test
  void aBenchOfALessonGoesOnInTheNewOneToo() throws Exception {
    Plan.Setup real = new Plan.Setup(null, "bass-34", null, 7);
    Plan plan =
        new Plan(
            "2027-03-01-1-demo",
            "Demo",
            List.of("relief"),
            List.of(real),
            Level.OWN,
            false,
            List.of(),
            false,
            List.of(),
            Map.of(),
            Questioning.SOME);
    rename("relief", "prepare", "lay-out");
    Store work = Store.at(samples.in("work-of-the-bench"));
    Sessions sessions = new Sessions(work, samples.in("own"), CLOCK);
    StoredSessions course = new StoredSessions(sessions, plan, real);
    try (BenchSessions.Run run = course.open(0)) {
      Bench bench = requireNonNull(run.live());
      for (int i = 0; i < 3; i++) {
        bench.answer(OrdinaryAnswers.to(bench, new Bracket(0.6, 0.65)));
      }
    }
    rename("relief", "lay-out", "get-ready");
    Clock later = Clock.offset(CLOCK, Duration.ofHours(1));
    StoredSessions next =
        new StoredSessions(new Sessions(work, samples.in("own"), later), plan, real);
    for (int i = 0; i < 2; i++) {
      try (BenchSessions.Run run = next.open(0)) {
        assertThat(requireNonNull(run.live()).prompt().said().text())
            .contains("The procedure was changed");
        // What was answered at the bench before counts on.
        assertThat(run.replaced().stream().filter(Answers::is).count()).isEqualTo(3L);
      }
    }
  }

  @Test
  void oneThatStillFitsGoesOn() throws Exception {
    Path file = samples.in("own/procedures/house-relief.yaml");
    Files.writeString(file, Files.readString(file).replace("Slacken every", "Let down every"));
    try (Sessions.Opened opened = Openings.resumeAnother(sessions(), MID_TURN)) {
      assertThat(opened.name()).isEqualTo(MID_TURN);
      opened.bench().answer(new Answer.Confirmed());
      assertThat(opened.bench().prompt().said().step()).isEqualTo("was-turn-made");
    }
  }
}
