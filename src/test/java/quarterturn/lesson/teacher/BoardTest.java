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
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

class BoardTest {
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

  private Board open(String name, Clock clock) throws Exception {
    return Board.open(
        folder,
        name,
        clock,
        (plan, logs) -> {
          Path path = Path.of("sheets-" + (written.size() + 1));
          written.add(path);
          return path;
        });
  }

  private Board open(String name) throws Exception {
    return open(name, watch);
  }

  private static BenchLesson bench(Board board, String name) {
    return Objects.requireNonNull(board.look().row(name)).bench();
  }

  @Test
  void aHoldIsReleasedByTheValueAlone() throws Exception {
    try (Board board = open("board")) {
      for (String none : List.of("", "ok", "0.30 to 0.35")) {
        assertThrows(
            NotUnderstoodException.class, () -> board.release("red", none, board.sight()), none);
      }
      for (String wrong : List.of("loosen 1/8", "tighten 1/4")) {
        assertThrows(
            RefusedException.class, () -> board.release("red", wrong, board.sight()), wrong);
      }
      assertWithMessage("what is refused is not written").that(board.look().unanswered()).isEmpty();
      assertThat(board.release("red", "tighten 1/8", board.sight()))
          .isEqualTo("Released Red: the turn, read back before it is made.");
      assertThat(board.sight().unanswered()).hasSize(1);
      RefusedException again =
          assertThrows(
              RefusedException.class, () -> board.release("red", "tighten 1/8", board.sight()));
      assertThat(again)
          .hasMessageThat()
          .isEqualTo("Red was let go on by board already; it has not looked yet.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "red").keptBy()).isEmpty();
      assertThat(board.sight().unanswered()).isEmpty();
      assertThat(
              assertThrows(RefusedException.class, () -> board.release("red", "", board.sight())))
          .hasMessageThat()
          .isEqualTo("Nothing keeps Red.");
    }
  }

  /** Each board sees the hold before the other's release, as on a folder that is synced. */
  @Test
  void ofTwoBoardsExactlyOneReleasesAHold() throws Exception {
    Path apart = Files.createTempDirectory(folder, "apart");
    InventedLesson.write(apart);
    Clock behind = Clock.offset(watch, Duration.ofMinutes(-10));
    try (Board one = open("one");
        Board two = Board.open(apart, "two", behind, (plan, logs) -> apart)) {
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
      for (WriterLog log : BoardView.benches(InventedLesson.PLAN, logs)) {
        assertThat(LessonProof.of(log, logs)).isEmpty();
      }
    }
  }

  @Test
  void aStopHasItsReasonAndIsClearedByAWord() throws Exception {
    try (Board board = open("board")) {
      Sight sight = board.look();
      BoardView.Row first = sight.view().rows().get(0);
      assertThat(first.bench().name()).isEqualTo("Blue");
      assertThat(first.waiting().what()).isEqualTo("stopped: It creaked.");
      assertThat(board.release("blue", "", board.sight())).isEqualTo("Released Blue: the stop.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "blue").keptBy()).isEmpty();
    }
  }

  /** The word was given to a bench that, as far as the teacher knew, had not stopped. */
  @Test
  void aStopThatWasNotSeenIsNotCleared() throws Exception {
    try (Board board = open("board")) {
      Sight before =
          InventedLesson.sight(
              InventedLesson.logs().stream()
                  .filter(log -> !Objects.requireNonNull(log.header()).writer().equals("blue"))
                  .toList());
      assertThat(assertThrows(RefusedException.class, () -> board.release("blue", "", before)))
          .hasMessageThat()
          .isEqualTo(
              "Not done: Blue was stopped just now: It creaked. Look there first, then release it"
                  + " once more.");
      assertThat(board.look().unanswered()).isEmpty();
      assertThat(board.release("blue", "", board.sight())).isEqualTo("Released Blue: the stop.");
    }
  }

  @Test
  void aBenchIsHeldAndLetGoOn() throws Exception {
    try (Board board = open("board")) {
      assertThrows(RefusedException.class, () -> board.hold("green", "  "));
      assertThat(board.hold("green", "Look here.")).isEqualTo("Held Green.");
      assertThat(board.hold(null, "All look here.")).isEqualTo("Held every bench.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "green").keptBy()).hasSize(2);
      assertThat(board.releaseAll()).isEqualTo("Released Blue, Red, Green.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "green").keptBy()).isEmpty();
      assertWithMessage("a stop is never released along with others")
          .that(bench(board, "blue").keptBy())
          .hasSize(1);
    }
  }

  @Test
  void aLevelIsSetFrozenAndThawed() throws Exception {
    try (Board board = open("board")) {
      assertThat(board.level("red", "Ana", Level.OWN, true))
          .isEqualTo("Ana at Red: the student's own, kept so.");
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "red").standing("Ana"))
          .isEqualTo(new Levels.Standing(Level.OWN, 0, true));
      board.level("red", "Ana", null, false);
      InventedLesson.take(folder, watch.now);
      assertThat(bench(board, "red").standing("Ana"))
          .isEqualTo(new Levels.Standing(Level.OWN, 0, false));
      assertThrows(RefusedException.class, () -> board.level("red", "Cleo", Level.OWN, null));
    }
  }

  @Test
  void aBoardThatCrashedOrCameLateSeesTheSame() throws Exception {
    BoardView seen;
    try (Board board = open("board")) {
      board.hold("green", "Look here.");
      seen = board.look().view();
    }
    // A line that was cut off while it was written.
    Files.writeString(folder.resolve("board.jsonl"), "{\"n\":3,\"at\":", StandardOpenOption.APPEND);
    try (Board again = open("board");
        Board late = open("late", Clock.offset(watch, Duration.ofMinutes(10)))) {
      assertThat(again.look().view()).isEqualTo(seen);
      assertThat(late.look().view()).isEqualTo(seen);
      late.release("blue", "", late.sight());
      again.level("red", "Ana", Level.OWN, null);
      InventedLesson.take(folder, watch.now);
      assertThat(bench(again, "blue").keptBy()).isEmpty();
      assertThat(bench(late, "red").standing("Ana").level()).isEqualTo(Level.OWN);
    }
  }

  /** Waiting is counted from what the bench ticks, whatever the board's own clock shows. */
  @Test
  void noClockOfABoardChangesHowLongABenchHasWaited() throws Exception {
    for (int minutes : new int[] {-10, 0, 10}) {
      Clock clock = Clock.offset(watch, Duration.ofMinutes(minutes));
      try (Board board = open("board" + (minutes + 10), clock)) {
        assertThat(Objects.requireNonNull(board.look().row("red")).waiting().howLong())
            .isEqualTo(Duration.ofMinutes(4));
      }
    }
  }

  @Test
  void theSheetsWaitForTheBenchesButNotForEver() throws Exception {
    try (Board board = open("board")) {
      board.end();
      assertThat(written).isEmpty();
      watch.now = watch.now.plus(Board.SHEETS_WAIT);
      assertThat(board.look().sheets())
          .isEqualTo(
              "The sheets are in sheets-1. Not there yet: what Blue, Red, Green still writes."
                  + " Write the sheets again later.");
      InventedLesson.take(folder, watch.now);
      board.look();
      assertThat(written).hasSize(1);
      assertThat(board.sheets()).isEqualTo("The sheets are in sheets-2.");
      assertThat(assertThrows(RefusedException.class, board::end))
          .hasMessageThat()
          .contains("ended already");
      assertThrows(RefusedException.class, () -> board.hold("red", "Look here."));
    }
  }

  @Test
  void theSheetsAreWrittenAsSoonAsEveryBenchHasLeft() throws Exception {
    try (Board board = open("board")) {
      board.end();
      InventedLesson.take(folder, watch.now);
      assertThat(board.look().sheets()).isEqualTo("The sheets are in sheets-1.");
      assertThat(board.sight().over()).isTrue();
    }
    assertThat(written).hasSize(1);
  }

  @Test
  void aBoardThatIsLeftRightAfterTheEndWritesTheSheets() throws Exception {
    try (Board board = open("board")) {
      board.end();
      assertThat(board.leave()).startsWith("The lesson is ended. The sheets are in sheets-1.");
    }
    assertThat(written).hasSize(1);
  }

  @Test
  void sheetsThatCanNotBeWrittenAreToldOf() throws Exception {
    try (Board board =
        Board.open(
            folder,
            "board",
            watch,
            (plan, logs) -> {
              throw new IOException("no room");
            })) {
      assertThat(board.sheets()).contains("could not be written (no room)");
    }
  }

  @Test
  void aNameThatIsTakenIsToldOf() throws Exception {
    assertThat(assertThrows(NotUnderstoodException.class, () -> open("red")))
        .hasMessageThat()
        .isEqualTo("red is a bench of this folder; choose another name");
    try (Board board = open("board")) {
      assertThat(board.sight().board()).isEqualTo("board");
      assertThat(assertThrows(IOException.class, () -> open("board")))
          .hasMessageThat()
          .contains("open in another window");
    }
  }

  @Test
  void aLaterLessonOfTheFolderHasABoardOfTheSameName() throws Exception {
    open("board").close();
    Path plan = folder.resolve(LessonFolder.PLAN);
    String later = Files.readString(plan).replace(InventedLesson.ID, "2027-03-08-second-turn");
    Files.writeString(plan, later);
    for (int again = 0; again < 2; again++) {
      try (Board board = open("board")) {
        assertThat(board.sight().board()).isEqualTo("board-2");
        assertThat(board.sight().view().rows()).isEmpty();
      }
    }
  }
}
