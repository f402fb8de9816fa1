package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;

/** One at a time, in this process and in others, and a dead one hinders nobody. */
class JournalLockTest {
  private static final int THREADS = 4;

  /** Takings by one thread; with the profile {@code deep}, 100,000 in both processes. */
  private static final int TIMES = Draws.of(1250);

  @TempDir Path folder;

  private Process other(String... args) throws IOException {
    List<String> words =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                LockTaker.class.getName()));
    words.addAll(List.of(args));
    return new ProcessBuilder(words).redirectErrorStream(true).start();
  }

  @Test
  void neverTwoAtOnceByFourThreadsInEachOfTwoProcesses() throws Exception {
    Path file = folder.resolve("demo.jsonl");
    LockTaker taker = new LockTaker(file);
    Process second = other(file.toString(), "" + THREADS, "" + TIMES);
    taker.take(THREADS, TIMES);
    assertThat(new String(second.getInputStream().readAllBytes())).isEmpty();
    assertThat(second.waitFor()).isEqualTo(0);
    assertThat(taker.twice()).isEqualTo(0);
  }

  @Test
  void aProcessThatWasKilledHindersNobody() throws Exception {
    Path file = folder.resolve("demo.jsonl");
    Process second = other(file.toString(), "hold");
    try (BufferedReader said = second.inputReader()) {
      assertThat(said.readLine()).isEqualTo("held");
      assertThrows(Journal.InUse.class, () -> JournalLock.take(file).close());
      second.destroyForcibly();
      second.waitFor();
    }
    assertThat(Files.exists(lockOf(file))).isTrue();
    JournalLock.take(file).close();
    assertThat(Files.exists(lockOf(file))).isFalse();
  }

  /** On POSIX systems the second try would give up what the first has, unseen. */
  @Test
  void aSecondTryInTheSameProcessLeavesTheLockAsItIs() throws Exception {
    Path file = folder.resolve("demo.jsonl");
    Path other = Files.createSymbolicLink(folder.resolve("again"), folder).resolve("demo.jsonl");
    try (JournalLock lock = JournalLock.take(file)) {
      assertThrows(Journal.InUse.class, () -> JournalLock.take(file).close());
      assertThrows(Journal.InUse.class, () -> JournalLock.take(other).close());
      try (BufferedReader said = other(file.toString(), "hold").inputReader()) {
        assertThat(said.readLine()).isEqualTo("in use");
      }
    }
  }

  /** Somebody tidies up by hand, and another window comes in: its lock stays its own. */
  @Test
  void aLockThatWasDeletedByHandTakesNobodyElsesWithIt() throws Exception {
    Path file = folder.resolve("demo.jsonl");
    try (JournalLock lock = JournalLock.take(file)) {
      Files.delete(lockOf(file));
      Process second = other(file.toString(), "hold");
      try (BufferedReader said = second.inputReader()) {
        assertThat(said.readLine()).isEqualTo("held");
        lock.close();
        assertThat(Files.exists(lockOf(file))).isTrue();
        assertThrows(Journal.InUse.class, () -> JournalLock.take(file).close());
      } finally {
        second.destroyForcibly().waitFor();
      }
    }
  }

  private static Path lockOf(Path file) {
    return file.resolveSibling("." + file.getFileName() + ".lock");
  }
}
