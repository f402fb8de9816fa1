package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.LessonBench;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

class DeskTest {
  @TempDir Path folder;

  private final Watch watch = new Watch();
  private final List<Path> written = new ArrayList<>();

  /** Stands until it is set. */
  private static final class Watch extends Clock {
    private Instant now = InventedLesson.NOW;

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  @BeforeEach
  void write() throws IOException {
    InventedLesson.write(folder);
  }

  private Desk open(String name, Clock clock) throws Exception {
    return Desk.open(
        folder,
        name,
        clock,
        (plan, logs) -> {
          Path path = Path.of("sheets-" + (written.size() + 1));
          written.add(path);
          return path;
        },
        InventedLesson.TITLES);
  }

  private Desk open(String name) throws Exception {
    return open(name, watch);
  }

  private static BenchLesson bench(Desk desk, String name) {
    return Objects.requireNonNull(desk.look().row(name)).bench();
  }

  @Test
  void aHoldIsReleasedByTheValueAlone() throws Exception {
    try (Desk desk = open("desk")) {
      for (String none : List.of("", "ok", "0.30 to 0.35")) {
        assertThrows(
            NotUnderstoodException.class, () -> desk.release("red", none, desk.sight()), none);
      }
      for (String wrong : List.of("loosen 1/8", "tighten 1/4")) {
        assertThrows(RefusedException.class, () -> desk.release("red", wrong, desk.sight()), wrong);
      }
      assertWithMessage("what is refused is not written").that(desk.look().unanswered()).isEmpty();
      assertThat(desk.release("red", "tighten 1/8", desk.sight()))
          .isEqualTo("Released Red: the turn, read back before it is made.");
      assertThat(desk.sight().unanswered()).hasSize(1);
      RefusedException again =
          assertThrows(
              RefusedException.class, () -> desk.release("red", "tighten 1/8", desk.sight()));
      assertThat(again)
          .hasMessageThat()
          .isEqualTo("Red was let go on by desk already; it has not looked yet.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "red").keptBy()).isEmpty();
      assertThat(desk.sight().unanswered()).isEmpty();
      assertThat(assertThrows(RefusedException.class, () -> desk.release("red", "", desk.sight())))
          .hasMessageThat()
          .isEqualTo("Nothing keeps Red.");
    }
  }

  /** Each desk sees the hold before the other's release, as on a folder that is synced. */
  @Test
  void ofTwoBoardsExactlyOneReleasesAHold() throws Exception {
    Path apart = Files.createTempDirectory(folder, "apart");
    InventedLesson.write(apart);
    Clock behind = Clock.offset(watch, Duration.ofMinutes(-10));
    try (Desk one = open("one");
        Desk two = Desk.open(apart, "two", behind, (plan, logs) -> apart, Map.of())) {
      one.release("red", "tighten 1/8", one.sight());
      two.release("red", "tighten 1/8", two.sight());
      Files.copy(apart.resolve("two.jsonl"), folder.resolve("two.jsonl"));
      InventedLesson.take(folder, watch.now);
      BenchLesson red = bench(one, "red");
      assertThat(Objects.requireNonNull(red.keep(InventedLesson.RED_HOLD)).releasedBy())
          .isEqualTo(new Ref("one", 1));
      assertThat(
              one.sight().view().given().stream()
                  .filter(given -> given.order() instanceof Order.Release)
                  .map(given -> given.answers().get("red")))
          .containsExactly("taken", "already released")
          .inOrder();
      List<WriterLog> logs = LessonFolder.read(folder).logs();
      for (WriterLog log : DeskView.benches(InventedLesson.PLAN, logs)) {
        assertThat(LessonProof.of(log, logs)).isEmpty();
      }
    }
  }

  @Test
  void aStopHasItsReasonAndIsClearedByAWord() throws Exception {
    try (Desk desk = open("desk")) {
      Sight sight = desk.look();
      DeskView.Row first = sight.view().rows().get(0);
      assertThat(first.bench().name()).isEqualTo("Blue");
      assertThat(first.waiting().what()).isEqualTo("stopped: It creaked.");
      assertThat(desk.release("blue", "", desk.sight())).isEqualTo("Released Blue: the stop.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "blue").keptBy()).isEmpty();
    }
  }

  /** The word was given to a bench that, as far as the teacher knew, had not stopped. */
  @Test
  void aStopThatWasNotSeenIsNotCleared() throws Exception {
    try (Desk desk = open("desk")) {
      Sight before =
          InventedLesson.sight(
              InventedLesson.logs().stream()
                  .filter(log -> !Objects.requireNonNull(log.header()).writer().equals("blue"))
                  .toList());
      assertThat(assertThrows(RefusedException.class, () -> desk.release("blue", "", before)))
          .hasMessageThat()
          .isEqualTo(
              "Not done: Blue was stopped just now: It creaked. Look there first, then release it"
                  + " once more.");
      assertThat(desk.look().unanswered()).isEmpty();
      assertThat(desk.release("blue", "", desk.sight())).isEqualTo("Released Blue: the stop.");
    }
  }

  @Test
  void aBenchIsHeldAndLetGoOn() throws Exception {
    try (Desk desk = open("desk")) {
      assertThrows(RefusedException.class, () -> desk.hold("green", "  "));
      assertThat(desk.hold("green", "Look here.")).isEqualTo("Held Green.");
      assertThat(desk.hold(null, "All look here.")).isEqualTo("Held every bench.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "green").keptBy()).hasSize(2);
      assertThat(desk.releaseAll()).isEqualTo("Released Blue, Red, Green.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "green").keptBy()).isEmpty();
      assertWithMessage("a stop is never released along with others")
          .that(bench(desk, "blue").keptBy())
          .hasSize(1);
    }
  }

  /** The last release ends it, so that nobody who comes later waits for what was meant before. */
  @Test
  void aHoldOfEveryBenchEndsOnceEachWasLetGoOn() throws Exception {
    try (Desk desk = open("desk")) {
      desk.release("blue", "", desk.sight());
      desk.hold(null, "All look here.");
      desk.release("red", "tighten 1/8", desk.sight());
      InventedLesson.take(folder, watch.now);
      for (String bench : List.of("green", "blue", "red")) {
        desk.look();
        desk.release(bench, "", desk.sight());
        InventedLesson.take(folder, watch.now);
      }
      WriterLog.Header late =
          new WriterLog.Header(InventedLesson.PLAN.lesson(), "late", WriterLog.Part.BENCH);
      try (LessonBench file = LessonBench.at(WriterFile.create(folder, late), Level.WORKED)) {
        file.record(new LessonEvent.Joined(watch.now, "Late"));
        file.take(LessonFolder.read(folder).logs(), watch.now);
      }
      assertThat(bench(desk, "late").taken()).isNotEmpty();
      assertThat(bench(desk, "late").keptBy()).isEmpty();
    }
  }

  @Test
  void aLevelIsSetFrozenAndThawed() throws Exception {
    try (Desk desk = open("desk")) {
      assertThat(desk.level("red", "Ana", Level.OWN, true))
          .isEqualTo("Ana at Red: the student's own, kept so.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "red").standing("Ana"))
          .isEqualTo(new Levels.Standing(Level.OWN, 0, true));
      desk.level("red", "Ana", null, false);
      InventedLesson.take(folder, watch.now);
      assertThat(bench(desk, "red").standing("Ana"))
          .isEqualTo(new Levels.Standing(Level.OWN, 0, false));
      assertThrows(RefusedException.class, () -> desk.level("red", "Cleo", Level.OWN, null));
    }
  }

  @Test
  void aDeskThatCrashedOrCameLateSeesTheSame() throws Exception {
    DeskView seen;
    try (Desk desk = open("desk")) {
      desk.hold("green", "Look here.");
      seen = desk.look().view();
    }
    // A line that was cut off while it was written.
    Files.writeString(folder.resolve("desk.jsonl"), "{\"n\":3,\"at\":", StandardOpenOption.APPEND);
    try (Desk again = open("desk");
        Desk late = open("late", Clock.offset(watch, Duration.ofMinutes(10)))) {
      assertThat(again.look().view()).isEqualTo(seen);
      assertThat(late.look().view()).isEqualTo(seen);
      late.release("blue", "", late.sight());
      again.level("red", "Ana", Level.OWN, null);
      InventedLesson.take(folder, watch.now);
      assertThat(bench(again, "blue").keptBy()).isEmpty();
      assertThat(bench(late, "red").standing("Ana").level()).isEqualTo(Level.OWN);
    }
  }

  /** Waiting is counted from what the bench ticks, whatever the desk's own clock shows. */
  @Test
  void noClockOfABoardChangesHowLongABenchHasWaited() throws Exception {
    for (int minutes : new int[] {-10, 0, 10}) {
      Clock clock = Clock.offset(watch, Duration.ofMinutes(minutes));
      try (Desk desk = open("desk" + (minutes + 10), clock)) {
        assertThat(Objects.requireNonNull(desk.look().row("red")).waiting().howLong())
            .isEqualTo(Duration.ofMinutes(4));
      }
    }
  }

  @Test
  void aClockThatIsSetBackDoesNotKeepTheSheetsForYears() throws Exception {
    try (Desk desk = open("desk")) {
      desk.end();
      watch.now = watch.now.minus(Duration.ofDays(4000));
      assertThat(desk.look().sheets()).contains("sheets-1");
    }
  }

  @Test
  void theSheetsWaitForTheBenchesButNotForEver() throws Exception {
    try (Desk desk = open("desk")) {
      desk.end();
      assertThat(written).isEmpty();
      watch.now = watch.now.plus(Desk.SHEETS_WAIT);
      assertThat(desk.look().sheets())
          .isEqualTo(
              "The sheets are in sheets-1. Not there yet: what Blue, Red, Green still writes."
                  + " Write the sheets again later.");
      InventedLesson.take(folder, watch.now);
      desk.look();
      assertThat(written).hasSize(1);
      assertThat(desk.sheets()).isEqualTo("The sheets are in sheets-2.");
      assertThat(assertThrows(RefusedException.class, desk::end))
          .hasMessageThat()
          .contains("ended already");
      assertThrows(RefusedException.class, () -> desk.hold("red", "Look here."));
    }
  }

  @Test
  void theSheetsAreWrittenAsSoonAsEveryBenchHasLeft() throws Exception {
    try (Desk desk = open("desk")) {
      desk.end();
      InventedLesson.take(folder, watch.now);
      assertThat(desk.look().sheets()).isEqualTo("The sheets are in sheets-1.");
      assertThat(desk.sight().over()).isTrue();
    }
    assertThat(written).hasSize(1);
  }

  @Test
  void aDeskThatIsLeftRightAfterTheEndWritesTheSheets() throws Exception {
    try (Desk desk = open("desk")) {
      desk.end();
      assertThat(desk.leave()).startsWith("The lesson is ended. The sheets are in sheets-1.");
    }
    assertThat(written).hasSize(1);
  }

  @Test
  void sheetsThatCanNotBeWrittenAreToldOf() throws Exception {
    try (Desk desk =
        Desk.open(
            folder,
            "desk",
            watch,
            (plan, logs) -> {
              throw new IOException("no room");
            },
            InventedLesson.TITLES)) {
      assertThat(desk.sheets()).contains("could not be written (no room)");
    }
  }

  @Test
  void aNameThatIsTakenIsToldOf() throws Exception {
    assertThat(assertThrows(NotUnderstoodException.class, () -> open("red")))
        .hasMessageThat()
        .isEqualTo("red is a bench of this folder; choose another name");
    try (Desk desk = open("desk")) {
      assertThat(desk.sight().desk()).isEqualTo("desk");
      assertThat(assertThrows(IOException.class, () -> open("desk")))
          .hasMessageThat()
          .contains("open in another window");
    }
  }

  @Test
  void aLaterLessonOfTheFolderHasABoardOfTheSameName() throws Exception {
    open("desk").close();
    Path plan = folder.resolve(LessonFolder.PLAN);
    String later = Files.readString(plan).replace(InventedLesson.ID, "2027-03-08-second-turn");
    Files.writeString(plan, later);
    for (int again = 0; again < 2; again++) {
      try (Desk desk = open("desk")) {
        assertThat(desk.sight().desk()).isEqualTo("desk-2");
        assertThat(desk.sight().view().rows()).isEmpty();
      }
    }
  }
}
