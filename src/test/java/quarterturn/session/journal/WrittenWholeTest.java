package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.platform.Folders;

/** A file that is written whole or not at all, beside what stands there. */
class WrittenWholeTest {
  private static final byte[] TEXT = "text".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void takesTheOldOnesPlaceOnlyWhereItMay() throws IOException {
    Path file = folder.resolve("a");
    Folders.write(file, TEXT, false);
    assertThat(Files.readString(file)).isEqualTo("text");
    Files.writeString(file, "mine");
    assertThrows(FileAlreadyExistsException.class, () -> Folders.write(file, TEXT, false));
    assertThat(Files.readString(file)).isEqualTo("mine");
    Folders.write(file, TEXT, true);
    assertThat(Files.readString(file)).isEqualTo("text");
    assertThat(folder.toFile().list()).asList().containsExactly("a");
  }

  @Test
  void nothingStaysOfWhatFails() throws IOException {
    Path inTheWay = Files.createDirectories(folder.resolve("a/b"));
    Path at = folder.resolve("a");
    assertThrows(FileSystemException.class, () -> Folders.write(at, TEXT, true));
    assertThat(Files.isDirectory(inTheWay)).isTrue();
    assertThat(folder.toFile().list()).asList().containsExactly("a");
    FileSystemException none =
        assertThrows(
            FileSystemException.class, () -> Folders.replace(folder.resolve("none/a"), TEXT));
    assertThat(none.getFile()).isEqualTo(folder.resolve("none/a").toString());
  }

  /** A name that anybody could draw beforehand is not written through. */
  @Test
  void noLinkIsWrittenThrough() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "mine");
    Files.createSymbolicLink(folder.resolve(".a.draft"), other);
    Folders.write(folder.resolve("a"), TEXT, true);
    assertThat(Files.readString(other)).isEqualTo("mine");
  }
}
