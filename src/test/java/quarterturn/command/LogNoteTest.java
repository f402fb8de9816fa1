package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The note for a repairer, of a session that an earlier version wrote. */
@Isolated
class LogNoteTest {
  private static final Clock THEN =
      Clock.fixed(Instant.parse("2027-03-02T09:30:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  @Test
  void aPageToPrint() throws Exception {
    SampleFolder samples = SampleFolder.copied(folder.resolve("samples"));
    String file = folder.resolve("note.html").toString();
    String data = samples.in("data").toString();
    String session = "2027-02-21-relief-6hw8";
    String[] args = {"--note", "--format", "html", "--out", file, "--data", data};
    assertThat(Captured.of(THEN, "", with(args, "log", "export", session)).status()).isEqualTo(0);
    String page = Files.readString(Path.of(file));
    assertThat(page).contains("<h1>Note for the repairer</h1>");
    assertThat(page).contains("<li>Jammed. ");
    assertThat(page).contains("finding is on record");
  }

  private static String[] with(String[] args, String... before) {
    return Stream.concat(Stream.of(before), Stream.of(args)).toArray(String[]::new);
  }
}
