package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.Launch;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;

/** A folder of one's own procedures. */
class OwnFilesTest {
  @TempDir Path folder;

  @Test
  void aFolderThatIsNotThereIsSaid() {
    int status = Launch.run(Clock.systemUTC(), "start", "relief", "--own", folder + "/none");
    assertThat(status).isEqualTo(2);
  }

  @Test
  void aProcedureWithFindingsIsNotStarted() throws Exception {
    Path own = Files.createDirectories(folder.resolve("own/procedures"));
    Path file = own.resolve("relief.yaml");
    Files.writeString(file, shipped().replace("smooth: key-out", "smooth: seat"));
    Sessions sessions =
        new Sessions(Store.at(folder.resolve("data")), own.getParent(), Clock.systemUTC());
    Sessions.Wish wish = new Sessions.Wish("relief", null, "bass-34", Style.MEDIUM, Role.BEGINNER);
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> sessions.start(wish));
    assertThat(refused).hasMessageThat().contains("turn-after-turn");
    assertThat(Store.at(folder.resolve("data")).sessions()).isEmpty();
    // One that calls it is not started either.
    Sessions.Wish whole = new Sessions.Wish("setup", null, "bass-34", Style.MEDIUM, Role.BEGINNER);
    assertThrows(UnreadableException.class, () -> sessions.start(whole));
  }

  private static String shipped() throws IOException {
    try (InputStream in = OwnFilesTest.class.getResourceAsStream("/procedures/relief.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
