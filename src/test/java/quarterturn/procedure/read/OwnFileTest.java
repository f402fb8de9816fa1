package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in the place of a rule file and is none is never passed over. */
@Timeout(20)
class OwnFileTest {
  @TempDir Path own;

  private Path place(String file) throws IOException {
    Path place = own.resolve(file);
    Files.createDirectories(place.getParent());
    return place;
  }

  private void refuses(Path place, String what) {
    FileSystemException e =
        assertThrows(FileSystemException.class, () -> new Shelf(own).open("relief"));
    assertThat(e.getFile()).isEqualTo(place.toString());
    assertThat(e.getReason()).startsWith(what);
    assertThat(e.getReason()).contains("or take it away");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "safety/limits.yaml",
        "safety/hazards.yaml",
        "procedures/results.yaml",
        "procedures/kinds.yaml",
        "procedures/relief.yaml",
        "procedures/blocks/one-turn.yaml",
        "safety",
        "procedures/blocks",
      })
  void aLinkThatLeadsNowhere(String file) throws IOException {
    Path place = place(file);
    Files.createSymbolicLink(place, own.resolve("nowhere"));
    refuses(place, "the link that stands here leads nowhere");
  }

  @Test
  void aFolder() throws IOException {
    Path place = Files.createDirectories(own.resolve("safety/limits.yaml"));
    refuses(place, "a folder stands here");
  }

  @Test
  void aFileWhereAFolderBelongs() throws IOException {
    Path place = Files.createFile(own.resolve("safety"));
    refuses(place, "no folder stands here");
  }

  /** A pipe nobody writes to would be waited for without end. */
  @Test
  void aPipe() throws Exception {
    Path place = place("safety/limits.yaml");
    assertThat(new ProcessBuilder("mkfifo", place.toString()).start().waitFor()).isEqualTo(0);
    refuses(place, "no plain file stands here");
    FileSystemException e =
        assertThrows(FileSystemException.class, () -> new Shelf(own).faults(place.toString()));
    assertThat(e.getFile()).isEqualTo(place.toString());
  }

  @Test
  void aLinkToAFileIsRead() throws Exception {
    Path file = Files.writeString(own.resolve("mine.yaml"), "limits:\n  per-reading: 1/8 turn\n");
    Files.createSymbolicLink(place("safety/limits.yaml"), file);
    assertThat(new Shelf(own).rules().limits().perReading().turns()).isEqualTo(0.125);
  }
}
