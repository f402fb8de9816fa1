package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The note for a repairer, of sessions that an earlier version wrote. */
@Isolated
class LogNoteTest {
  private static final Clock THEN =
      Clock.fixed(Instant.parse("2027-03-02T09:30:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private Captured note(String session, String... more) throws Exception {
    SampleFolder samples = SampleFolder.copied(folder.resolve("samples"));
    String[] args = {"log", "export", session, "--note", "--data", samples.in("data").toString()};
    String[] all = Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return Captured.of(THEN, "", all);
  }

  @Test
  void aJammedRodNut() throws Exception {
    Captured ran = note("2027-02-21-relief-6hw8");
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out()).contains("- Jammed. ");
    assertThat(ran.out()).contains("finding is on\n  record");
  }

  @Test
  void aSessionThatLeavesNothingSaysSo() throws Exception {
    assertThat(note("2027-02-10-relief-482b").out())
        .contains("- This session leaves nothing to a repairer.");
  }

  @Test
  void aFileToPrint() throws Exception {
    Path file = folder.resolve("note.html");
    assertThat(
            note("2027-02-21-relief-6hw8", "--format", "html", "--out", file.toString()).status())
        .isEqualTo(0);
    assertThat(Files.readString(file)).contains("<h1>Note for the repairer</h1>");
  }

  @Test
  void aNoteIsNoTable() throws Exception {
    Captured ran = note("2027-02-21-relief-6hw8", "--format", "csv");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("use text, markdown or html");
  }
}
