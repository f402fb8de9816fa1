package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Pty;
import quarterturn.command.FastMain;
import quarterturn.jar.Packaged;

/** A temporary folder into which nothing can be unpacked, as where its disk is full. */
class NoTemporaryFolderIT {
  @TempDir Path folder;

  private Pty start(String... words) throws Exception {
    Path file = Files.writeString(folder.resolve("no-folder"), "");
    return Pty.start(
        80,
        24,
        Map.of(),
        Packaged.test(
            FastMain.class, List.of("-Djline.tmpdir=" + file.resolve("in")), List.of(words)));
  }

  @Test
  void typedLinesAreReadAllTheSame() throws Exception {
    String data = "--data=" + folder.resolve("data");
    try (Pty pty = start("1", "start", "relief", "--kind=bass-34", "--plain", data)) {
      pty.await("> ", 0);
      pty.send("quit\r").await("Everything is kept.", 0);
      assertThat(pty.exitStatus()).isEqualTo(0);
      assertThat(pty.sent()).doesNotContain("Exception:");
    }
  }

  @Test
  void theFullScreenSaysWhatToTypeInstead() throws Exception {
    try (Pty pty = start("1", "--data=" + folder.resolve("data"))) {
      pty.await("this terminal can't be opened; use --plain", 0);
      assertThat(pty.exitStatus()).isEqualTo(2);
    }
  }
}
