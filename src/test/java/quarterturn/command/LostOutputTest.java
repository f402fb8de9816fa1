package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.command.place.Output;
import quarterturn.lesson.InventedLesson;
import quarterturn.platform.UserFolders;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Store;

/** Standard output that is full, or that nobody reads on, by every command. */
@Isolated
class LostOutputTest {
  private static final String FULL = "No space left on device";
  private static final String CLOSED = "Broken pipe";

  private static final List<String> COMMANDS =
      List.of(
          "--help",
          "log list",
          "log export SESSION",
          "log export SESSION --format html",
          "instrument list",
          "instrument edit my-bass --nut none",
          "due",
          "due --lines",
          "check --schema",
          "reckon --help",
          "reckon frets --scale 34in --frets 20",
          "rehearse --lines --auto",
          "start relief --lines --instrument my-bass",
          "settings",
          "lesson sheets LESSON");

  @TempDir Path folder;
  private Path data = Path.of("unset");
  private Path lesson = Path.of("unset");
  private String session = "";

  /** A stream that takes some bytes, and then none. */
  private static final class Lost extends OutputStream {
    private final String why;
    private int room;

    Lost(int room, String why) {
      this.room = room;
      this.why = why;
    }

    @Override
    public void write(int b) throws IOException {
      if (room-- <= 0) {
        throw new IOException(why);
      }
    }
  }

  @BeforeEach
  void kept() throws Exception {
    data = folder.resolve("data");
    session = Shop.of(data, "my-bass").begun("my-bass");
  }

  private Captured run(Shop shop, OutputStream to, String typed) {
    String[] args =
        Stream.concat(
                Stream.of(typed.replace("SESSION", session).split(" ", -1))
                    .map(word -> word.equals("LESSON") ? lesson.toString() : word),
                Stream.of("--data", data.toString()))
            .toArray(String[]::new);
    UserFolders folders = new UserFolders(Map.of(), "Linux", folder.toString());
    return Captured.of(shop, folders, InputStream.nullInputStream(), to, args);
  }

  @Test
  void isOneLineAndAFailingStatusOrQuiet() throws Exception {
    lesson = folder.resolve("lesson");
    InventedLesson.write(Files.createDirectories(lesson));
    Shop shop = new Shop(data);
    // Full for one and closed for the next: how it ends is decided in one place for all.
    for (int i = 0; i < COMMANDS.size(); i++) {
      String typed = COMMANDS.get(i);
      boolean full = i % 2 == 0;
      Captured ran = run(shop, full ? new Lost(0, FULL) : new Lost(10, CLOSED), typed);
      assertWithMessage(typed + ran.err())
          .that(ran.status())
          .isEqualTo(full ? Launch.USAGE : Output.NOBODY_READS);
      assertWithMessage(typed)
          .that(ran.err())
          .isEqualTo(
              full
                  ? "quarterturn: standard output can't be written to (No space left on device);"
                      + " make room there, or name another\n"
                  : "");
    }
  }

  /** What was answered is kept, and the session is left in order. */
  @ParameterizedTest
  @ValueSource(strings = {"--lines", "--plain"})
  void leavesTheSessionInOrder(String face) throws IOException {
    Shop shop = new Shop(data);
    Lost lost = new Lost(0, CLOSED);
    String[] args = {"resume", face, "--data", data.toString()};
    UserFolders folders = new UserFolders(Map.of(), "Linux", folder.toString());
    InputStream in = new ByteArrayInputStream("medium\n".getBytes(StandardCharsets.UTF_8));
    assertThat(Captured.of(shop, folders, in, lost, args).status()).isEqualTo(Output.NOBODY_READS);
    Glance left = Store.at(data).sessions().get(0);
    assertThat(left.unfinished()).isTrue();
    assertThat(left.standing()).isNotNull();
  }

  /** Of another thread, as one that tidies up at Ctrl-C, nothing is heard. */
  @Test
  void onlyTheCommandItselfIsEnded() throws InterruptedException {
    Output out = new Output(new Lost(0, CLOSED));
    Throwable[] thrown = new Throwable[1];
    Thread other = new Thread(() -> out.stream().println("left"));
    other.setUncaughtExceptionHandler((thread, e) -> thrown[0] = e);
    other.start();
    other.join();
    assertThat(thrown[0]).isNull();
    assertThat(out.status(0, said -> {})).isEqualTo(Output.NOBODY_READS);
  }
}
