package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.store.Sign;
import quarterturn.lesson.student.LessonBench;

class FollowingTest {
  private static final long NOW = 5_000_000_000L;
  private static final long SECOND = 1_000_000_000L;

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    InventedLesson.write(folder);
  }

  private static int events(Following.Known known, String writer) {
    return known.logs().stream()
        .filter(log -> log.header() != null && log.header().writer().equals(writer))
        .mapToInt(log -> log.events().size())
        .findFirst()
        .orElse(-1);
  }

  @Test
  void aLineThatIsHalfThereWaitsAndIsToldOfOnlyWhenItStays() throws IOException {
    Path red = folder.resolve("red.jsonl");
    byte[] whole = Files.readAllBytes(red);
    Following following = new Following(folder);
    int all = events(following.look(NOW), "red");
    for (int cut = 1; cut < 40; cut += 13) {
      Files.write(red, Arrays.copyOf(whole, whole.length - cut));
      Following late = new Following(folder);
      Following.Known half = late.look(NOW);
      assertThat(events(half, "red")).isEqualTo(all - 1);
      assertThat(half.notices()).isEmpty();
      assertThat(String.join("", late.look(NOW + SECOND).notices())).contains("red");
      Files.write(red, whole);
      Following.Known then = late.look(NOW + 2 * SECOND);
      assertThat(events(then, "red")).isEqualTo(all);
      assertThat(then.notices()).isEmpty();
      assertThat(heard(then, "red")).isEqualTo(Duration.ZERO);
    }
  }

  @Test
  void whatWasSeenStaysWhereAFileIsGoneOrShorter() throws IOException {
    Path red = folder.resolve("red.jsonl");
    byte[] whole = Files.readAllBytes(red);
    Following following = new Following(folder);
    int all = events(following.look(NOW), "red");
    Files.delete(red);
    Following.Known gone = following.look(NOW);
    assertThat(events(gone, "red")).isEqualTo(all);
    assertThat(gone.notices())
        .containsExactly("red.jsonl is not there right now; what was seen of it stands here.");
    List<String> lines = Files.readAllLines(folder.resolve("green.jsonl"));
    Files.write(folder.resolve("green.jsonl"), lines.subList(0, 4));
    Files.write(red, whole);
    Following.Known shorter = following.look(NOW);
    assertThat(events(shorter, "green")).isEqualTo(lines.size() - 1);
    assertThat(shorter.notices())
        .containsExactly("green.jsonl is shorter than it was; what was seen of it stands here.");
    assertThat(shorter.heard().values().stream().filter(Heard::ever)).isEmpty();
  }

  @Test
  void aFolderThatIsGoneForAMomentIsTriedAgain() throws IOException {
    Following following = new Following(folder);
    following.look(NOW);
    Path away = folder.resolveSibling(folder.getFileName() + "-away");
    Files.move(folder, away);
    Following.Known gone = following.look(NOW);
    assertThat(gone.logs()).hasSize(4);
    assertThat(gone.notices().get(0)).contains("it is tried again");
    Files.move(away, folder);
    assertThat(following.look(NOW).notices()).isEmpty();
  }

  private static Duration heard(Following.Known known, String bench) {
    Heard heard = Objects.requireNonNull(known.heard().get(bench));
    assertThat(heard.ever()).isTrue();
    return heard.ago();
  }

  @Test
  void aFileThatGrewIsHeardOfByTheFollowersOwnClock() throws Exception {
    Following following = new Following(folder);
    following.look(NOW);
    try (LessonBench red = InventedLesson.bench(folder, "red")) {
      red.record(new LessonEvent.Ticked(InventedLesson.NOW.minusSeconds(600)));
    }
    assertThat(heard(following.look(NOW + SECOND), "red")).isEqualTo(Duration.ZERO);
    assertThat(heard(following.look(NOW + 10 * SECOND), "red")).isEqualTo(Duration.ofSeconds(9));
    assertThat(following.look(NOW + 10 * SECOND).heard().get("blue"))
        .isEqualTo(new Heard(Duration.ofSeconds(10), false, null));
  }

  /** The bench's clock is a day behind. */
  @Test
  void aSignOfLifeIsHeardOfWhenItsTextChanges() throws Exception {
    Instant theirs = InventedLesson.NOW.minusSeconds(86_400);
    new Sign(1, theirs).write(folder, "red");
    Following following = new Following(folder);
    following.look(NOW);
    assertThat(Objects.requireNonNull(following.look(NOW + SECOND).heard().get("red")).ever())
        .isFalse();
    new Sign(2, theirs.plusSeconds(10)).write(folder, "red");
    assertThat(heard(following.look(NOW + 2 * SECOND), "red")).isEqualTo(Duration.ZERO);
    Files.writeString(folder.resolve("red.sign"), "3 20");
    assertThat(heard(following.look(NOW + 12 * SECOND), "red")).isEqualTo(Duration.ofSeconds(10));
    Sign.remove(folder, "red");
    Following.Known gone = following.look(NOW + 40 * SECOND);
    assertThat(heard(gone, "red")).isEqualTo(Duration.ofSeconds(38));
    assertThat(Objects.requireNonNull(gone.heard().get("red")).clock())
        .isEqualTo(theirs.plusSeconds(10));
  }
}
