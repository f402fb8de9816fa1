package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.fault.Weather.Call;
import quarterturn.fault.Weather.Fate;
import quarterturn.lesson.store.Striking;
import quarterturn.session.Event;
import quarterturn.session.journal.DisplacedException;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.JournalLock;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/** The points at which something was lost or invented once, each by what it was. */
class FoundFaultsTest {
  private static final int DRAWS = 12;
  private static final int BLOCK = 512;
  private static final Journal.Header HEADER = new Journal.Header("demo", "relief", 1, "0");
  private static final List<Event> EVENTS = SessionScenario.PLAYED.events();

  private static Path demo(MemoryDisk disk) {
    return disk.top().resolve("tmp/demo.jsonl");
  }

  @Test
  void foldersThatWereMadeAreThereAfterAPowerCut() throws Exception {
    MemoryDisk disk = MemoryDisk.empty();
    Store.at(disk.top().resolve("home/data")).add(PlayedSession.INSTRUMENT);
    for (int draw = 0; draw < DRAWS; draw++) {
      Store left = Store.at(disk.cut(draw).top().resolve("home/data"));
      assertThat(left.instruments().instruments()).containsExactly(PlayedSession.INSTRUMENT);
    }
  }

  @Test
  void aFolderThatCouldNotBeForcedIsTold() {
    Points kept = new Points(KeptScenario::new);
    assertThat(kept.every(Fault.FAILS_A_WHILE, Call.FORCE, "/instruments", 2)).isAtLeast(2);
  }

  /** Nor is it taken for a file that is gone, of which a copy is made. */
  @Test
  void anAnswerOfWhichNobodyKnowsWhetherItIsWrittenIsNotWrittenTwice() throws Exception {
    int refused = 0;
    for (int failing = 1; failing <= DRAWS; failing++) {
      MemoryDisk disk = MemoryDisk.empty();
      try (Journal journal = Journal.create(demo(disk), HEADER)) {
        journal.append(EVENTS.subList(0, 2));
        int[] left = {failing};
        disk.weather((call, path, bytes) -> --left[0] == 0 ? Fate.FAILS : Fate.FINE);
        try {
          journal.append(EVENTS.subList(2, 4));
        } catch (DisplacedException e) {
          throw new AssertionError("call " + failing, e);
        } catch (IOException e) {
          refused++;
          journal.append(EVENTS.subList(2, 4));
        }
        disk.weather(Weather.FINE);
      }
      Journal.Contents found = Journal.read(demo(disk));
      assertWithMessage("call " + failing).that(found.events()).isEqualTo(EVENTS.subList(0, 4));
      assertThat(found.notice()).isNull();
    }
    assertThat(refused).isAtLeast(DRAWS / 4);
  }

  /** A journal whose last line was written without its first block, by its bytes. */
  private static byte[] holed(MemoryDisk disk, int whole, int written) throws IOException {
    try (Journal journal = Journal.create(demo(disk), HEADER)) {
      journal.append(EVENTS.subList(0, whole));
    }
    int sound = (int) Files.size(demo(disk));
    try (Journal journal = Journal.open(demo(disk))) {
      journal.append(EVENTS.subList(whole, written));
    }
    byte[] bytes = Files.readAllBytes(demo(disk));
    Arrays.fill(bytes, sound, Math.min(bytes.length, (sound / BLOCK + 1) * BLOCK), (byte) 0);
    Files.write(demo(disk), bytes);
    return bytes;
  }

  @Test
  void aLastWriteThatLacksAPieceIsLeftOutAndTheSessionGoesOn() throws Exception {
    int seen = 0;
    for (int end : SessionScenario.PLAYED.ends()) {
      int next = SessionScenario.PLAYED.ends().stream().filter(n -> n > end).findFirst().orElse(0);
      MemoryDisk disk = MemoryDisk.empty();
      if (next < end + 1 || holed(disk, end, next).length % BLOCK == 0) {
        continue;
      }
      seen++;
      assertThat(Journal.read(demo(disk)).notice()).contains("was cut short");
      try (Journal journal = Journal.open(demo(disk))) {
        assertThat(journal.found().events()).isEqualTo(EVENTS.subList(0, end));
        journal.append(EVENTS.subList(end, next));
      }
      assertThat(Journal.read(demo(disk)).notice()).isNull();
    }
    assertThat(seen).isAtLeast(DRAWS);
  }

  @Test
  void aPieceThatIsMissingFurtherUpIsDamageAndNothingAfterItIsCutOff() throws Exception {
    MemoryDisk disk = MemoryDisk.empty();
    byte[] bytes = holed(disk, 3, 3 + DRAWS);
    assertThat(Journal.read(demo(disk)).damaged()).isTrue();
    IOException e = assertThrows(IOException.class, () -> Journal.open(demo(disk)).close());
    assertThat(e).hasMessageThat().contains("Start a new session");
    assertThat(Files.readAllBytes(demo(disk))).isEqualTo(bytes);
  }

  @Test
  void aNameThatIsStruckFromSomeFilesIsStruckFromTheRestByTheSameOnceMore() {
    Points lesson = new Points(() -> new LessonScenario(false));
    assertThat(lesson.every(Fault.KILLED, Call.MOVE, ".jsonl", 1)).isAtLeast(3);
    assertThat(lesson.every(Fault.CUT, Call.DELETE, ".striking", 4)).isAtLeast(4);
  }

  @Test
  void anotherNameWaitsUntilTheOneThatWasBegunIsStruck() {
    MemoryDisk disk = MemoryDisk.empty();
    disk.weather(
        (call, path, bytes) -> {
          if (call == Call.MOVE && Files.exists(disk.top().resolve("lesson/.striking"))) {
            disk.weather(Weather.FINE);
            throw new PowerCut();
          }
          return Fate.FINE;
        });
    assertThrows(PowerCut.class, () -> new LessonScenario(false).play(disk.top()));
    Path lesson = disk.top().resolve("lesson");
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Striking.of(lesson, "Ben", Instant.EPOCH));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("the name Ana is struck from some files only; strike it once more first");
  }

  @Test
  void noNumberStandsForANameWhereAFileCouldNotBeRead() {
    Points lesson = new Points(() -> new LessonScenario(true));
    assertThat(lesson.every(Fault.FAILS, Call.READ, "blue.jsonl", 1)).isAtLeast(1);
    assertThat(lesson.every(Fault.FAILS, Call.LOOK, "blue.jsonl", 1)).isAtLeast(1);
  }

  @Test
  void aFolderThatCouldNotBeListedIsTold() {
    Points lesson = new Points(() -> new LessonScenario(true));
    assertThat(lesson.every(Fault.FAILS, Call.LIST, "", 1)).isAtLeast(3);
  }

  /** The file that was opened is deleted, and another made, before it is locked. */
  @Test
  void aLockOnAFileThatIsNotAtItsPathAnyMoreIsTakenAnew() throws Exception {
    MemoryDisk disk = MemoryDisk.empty();
    Path file = disk.top().resolve("tmp/.demo.jsonl.lock");
    int[] times = {0};
    disk.weather(
        (call, path, bytes) -> {
          if (call == Call.LOCK && times[0]++ == 0) {
            swap(disk, file);
          }
          return Fate.FINE;
        });
    try (JournalLock lock = JournalLock.take(demo(disk));
        FileChannel other = FileChannel.open(file, StandardOpenOption.WRITE)) {
      assertThrows(OverlappingFileLockException.class, other::tryLock);
    }
    assertThat(Files.exists(file)).isFalse();
  }

  private static void swap(MemoryDisk disk, Path file) {
    Path again = disk.top().resolve(file.toString());
    try {
      Files.delete(again);
      Files.write(again, "x".getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
