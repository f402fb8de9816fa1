package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.student.LessonBench;

class FollowingTest {
  private static final Instant NOW = InventedLesson.NOW;

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
      assertThat(String.join("", late.look(NOW.plusSeconds(1)).notices())).contains("red");
      Files.write(red, whole);
      Following.Known then = late.look(NOW.plusSeconds(2));
      assertThat(events(then, "red")).isEqualTo(all);
      assertThat(then.notices()).isEmpty();
      assertThat(then.grown()).containsExactly("red", NOW.plusSeconds(2));
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
    assertThat(shorter.grown()).isEmpty();
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

  @Test
  void aFileThatGrewIsHeardOfByTheFollowersOwnClock() throws Exception {
    Following following = new Following(folder);
    assertThat(following.look(NOW).grown()).isEmpty();
    try (LessonBench red = InventedLesson.bench(folder, "red")) {
      red.record(new LessonEvent.Ticked(NOW.minusSeconds(600)));
    }
    Instant later = NOW.plusSeconds(1);
    assertThat(following.look(later).grown()).containsExactly("red", later);
    assertThat(following.look(later.plusSeconds(9)).grown()).containsExactly("red", later);
  }
}
