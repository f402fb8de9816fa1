package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --watch} in the real jar: a round for each time a file is saved. */
class CheckWatchIT {
  private static final String TIME = "[0-2][0-9]:[0-5][0-9]:[0-5][0-9] ";
  private static final String FOUND = "1 finding in 1 file; ";

  @TempDir Path folder;

  private static JarProcess watch(Path what) throws Exception {
    return JarProcess.start(List.of("check", "--watch", what.toString()));
  }

  @Test
  void aFileThatIsMendedIsFoundMended() throws Exception {
    Path file = Files.writeString(folder.resolve("glance.yaml"), CheckIT.BAD);
    try (JarProcess jar = watch(file)) {
      assertThat(jar.line()).matches(TIME + "watching 1 file; Ctrl-C ends it");
      assertThat(jar.lineWith("^")).isEqualTo("        ^");
      assertThat(jar.lineWith(FOUND)).isNotEmpty();
      assertThat(jar.line()).isEmpty();

      Files.writeString(file, CheckIT.GOOD);
      assertThat(jar.line()).matches(TIME + ".*glance.yaml was saved");
      assertThat(jar.line()).isEqualTo("1 procedure checked, nothing found.");
      assertThat(jar.line()).isEmpty();

      // As editors save that write beside a file and then put the new one in its place.
      Path beside = Files.writeString(folder.resolve("glance.tmp"), CheckIT.BAD);
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
      assertThat(jar.line()).matches(TIME + ".*glance.yaml was saved");
      assertThat(jar.lineWith(FOUND)).isNotEmpty();
      jar.terminate();
      assertThat(jar.ended().err()).isEmpty();
    }
  }

  @Test
  void aFolderIsWatchedForFilesThatComeAndGo() throws Exception {
    Files.writeString(folder.resolve("glance.yaml"), CheckIT.GOOD);
    try (JarProcess jar = watch(folder)) {
      jar.lineWith("1 procedure checked, nothing found.");
      Path other = Files.writeString(folder.resolve("other.yaml"), CheckIT.BAD);
      assertThat(jar.lineWith(":")).matches(TIME + ".*other.yaml is new");
      assertThat(jar.lineWith(FOUND)).endsWith("2 procedures checked.");
      Files.delete(other);
      jar.lineWith("other.yaml is gone");
      assertThat(jar.line()).isEqualTo("1 procedure checked, nothing found.");
    }
  }
}
