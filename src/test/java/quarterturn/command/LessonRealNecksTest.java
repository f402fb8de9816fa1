package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Store;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A lesson on real necks, of which one stands turned: what is planned, and what is said after. */
@Isolated
class LessonRealNecksTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final String BASS = "bass-34";

  @TempDir Path temporary;
  private Path folder = Path.of("unset");

  @BeforeEach
  void plan() {
    folder = temporary.resolve("real");
    Captured made = run("", "new", "--neck", "left=real", "--neck", "right=dead");
    assertThat(made.out())
        .contains("Real necks: 1/2 turn a day for each, so 2 to 4 turns, then 24 hours of rest.");
    assertThat(made.out()).contains("Plan to set them back after class.");
  }

  private Captured run(String in, String command, String... more) {
    Clock clock = Clock.fixed(NOON.plus(Duration.ofHours(2)), ZoneOffset.UTC);
    String[] args = new String[more.length + 3];
    args[0] = "lesson";
    args[1] = command;
    args[2] = folder.toString();
    System.arraycopy(more, 0, args, 3, more.length);
    return Captured.of(clock, in, args);
  }

  /** A session of the bench, in which the rod was turned so far. */
  private void session(int hour, Turn turn, @Nullable String lesson, @Nullable Instant back)
      throws Exception {
    Store store = Store.at(folder.resolve("left"));
    Instant at = NOON.plus(Duration.ofHours(hour));
    if (!store.instrumentNames().contains(BASS)) {
      store.add(FormFields.instrument(BASS, at, Map.of(FormField.KIND, BASS)));
    }
    List<Event> events =
        List.of(
            new Event.Started(
                at,
                "relief",
                3,
                "d1",
                Role.BEGINNER,
                BASS,
                BASS,
                Style.MEDIUM,
                null,
                List.of(),
                List.of(),
                null,
                null,
                null,
                null,
                List.of(),
                lesson,
                back,
                null),
            new Event.Read(
                at,
                "found-low",
                Quantity.RELIEF,
                Which.LOWEST,
                "E1",
                List.of(1, 17),
                8,
                0.05,
                new Bracket(0.60, 0.65),
                null),
            new Event.Turned(at.plusSeconds(60), "turn-rod", turn, Feel.SMOOTH));
    LocalDate day = LocalDate.ofInstant(at, ZoneOffset.UTC);
    try (Journal journal = store.create("relief", 3, "d1", day, new Random(hour)).journal()) {
      journal.append(events);
    }
  }

  private void bench() throws Exception {
    Plan plan = PlanFile.in(folder);
    try (WriterFile left = WriterFile.of(folder, plan.lesson(), "left", WriterLog.Part.BENCH)) {
      left.append(List.of(new LessonEvent.Joined(NOON, "left"), plan.came(NOON, "Ana")));
    }
    session(0, Turn.EIGHTH, plan.lesson(), null);
    session(1, Turn.EIGHTH, plan.lesson(), null);
  }

  private String sheet() {
    return run("", "sheets").out().replaceAll("\\s+", " ");
  }

  @Test
  void theSheetSaysWhatIsTypedToSetItBack() throws Exception {
    bench();
    assertThat(sheet()).contains("left 1/4 turn tighter than the");
    assertThat(run("end\nyes\nquit\n", "desk", "--plain").out().replaceAll("\\s+", " "))
        .contains(
            "Set back left (1/4 turn tighter than the lesson found it; 1/4 turn more today):"
                + " quarterturn start set-back --instrument bass-34 --data "
                + folder.resolve("left"));
  }

  @Test
  void oneThatIsSetBackIsNotNamed() throws Exception {
    bench();
    session(2, new Turn(-0.25), null, NOON);
    assertThat(sheet()).contains("No real neck stands turned.");
  }

  @Test
  void theNextPlanNamesWhatIsNotSetBack() throws Exception {
    bench();
    assertThat(run("", "new", "--next").out())
        .contains("Not set back yet: left, 1/4 turn tighter than the lesson found it;");
  }
}
