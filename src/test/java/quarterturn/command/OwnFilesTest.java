package quarterturn.command;

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
import quarterturn.procedure.Role;
import quarterturn.procedure.Unreadable;
import quarterturn.procedure.kind.Style;
import quarterturn.session.store.Store;

/** A folder of one's own procedures. */
class OwnFilesTest {
  @TempDir Path folder;

  @Test
  void aFolderThatIsNotThereIsSaid() {
    int status = Cli.run(Clock.systemUTC(), "start", "relief", "--own", folder + "/none");
    assertThat(status).isEqualTo(2);
  }

  @Test
  void aProcedureWithFindingsIsNotStarted() throws Exception {
    Path own = Files.createDirectories(folder.resolve("own/procedures"));
    Path file = own.resolve("relief.yaml");
    Files.writeString(file, shipped().replace("smooth: key-out", "smooth: seat"));
    Desk desk = new Desk(Store.at(folder.resolve("data")), own.getParent(), Clock.systemUTC());
    Desk.Wish wish = new Desk.Wish("relief", null, "bass-34", Style.MEDIUM, Role.BEGINNER);
    Unreadable refused = assertThrows(Unreadable.class, () -> desk.start(wish));
    assertThat(refused).hasMessageThat().contains("turn-after-turn");
    assertThat(Store.at(folder.resolve("data")).sessions()).isEmpty();
    // One that calls it is not started either.
    Desk.Wish whole = new Desk.Wish("setup", null, "bass-34", Style.MEDIUM, Role.BEGINNER);
    assertThrows(Unreadable.class, () -> desk.start(whole));
  }

  private static String shipped() throws IOException {
    try (InputStream in = OwnFilesTest.class.getResourceAsStream("/procedures/relief.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
