package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session whose file is taken away stops, says so, and goes on in a new file. */
class SwappedFileTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-01T09:00:00Z"), ZoneOffset.UTC);

  @TempDir Path data;

  private Captured run(InputStream in, String... args) {
    return Captured.of(CLOCK, in, Captured.at(data, args));
  }

  private static InputStream typed(String lines) {
    return new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8));
  }

  /** Lines, and then, once they are answered, lines that come after the file was taken away. */
  private InputStream typed(String before, String after) {
    InputStream taking =
        new InputStream() {
          private final InputStream then = typed(after);
          private boolean taken;

          @Override
          public int read() throws IOException {
            take();
            return then.read();
          }

          @Override
          public int read(byte[] to, int from, int length) throws IOException {
            take();
            return then.read(to, from, length);
          }

          private void take() throws IOException {
            if (!taken) {
              Files.move(files().get(0), data.resolve("taken"));
              taken = true;
            }
          }
        };
    return new SequenceInputStream(typed(before), taking);
  }

  private List<Path> files() {
    try (Stream<Path> all = Files.list(data.resolve("sessions"))) {
      return all.filter(file -> file.toString().endsWith(".jsonl")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theTypedFaceStopsAndItGoesOnFromTheNewFile() throws IOException {
    Captured stopped =
        run(typed("medium\n", "u\nquit\n"), "start", "relief", "--kind", "bass-34", "--plain");
    assertThat(stopped.status()).isEqualTo(2);
    assertThat(files()).hasSize(1);
    String file = files().get(0).getFileName().toString();
    String name = file.replace(".jsonl", "");
    assertThat(name).endsWith("-2");
    String said = stopped.out().replaceAll("\\s+", " ");
    assertThat(said).contains("Stopped: " + name.replaceAll("-2$", ".jsonl was deleted or moved"));
    assertThat(said).endsWith("Go on with: quarterturn resume " + name + " ");
    assertThat(said).doesNotContain("Everything is kept");
    List<String> lost = Files.readAllLines(data.resolve("taken"));
    List<String> kept = Files.readAllLines(files().get(0));
    assertThat(kept.size()).isGreaterThan(lost.size());
    assertThat(kept.get(1)).startsWith(lost.get(1).replaceAll(",\"sum.*", ""));
    Captured listed = run(typed(""), "log", "list");
    assertThat(listed.out()).contains(name);
    Captured resumed = run(typed("quit\n"), "resume", name, "--plain");
    assertThat(resumed.status()).isEqualTo(0);
    assertThat(resumed.out()).contains("Session " + name);
  }

  @Test
  void soDoesTheFaceOfJsonLines() {
    String confirmed = "{\"answer\":\"confirmed\"}\n";
    Captured stopped =
        run(
            typed(confirmed, confirmed.repeat(2)),
            "start",
            "relief",
            "--kind",
            "bass-34",
            "--lines");
    assertThat(stopped.status()).isEqualTo(2);
    assertThat(stopped.out()).contains("could not go on: ");
    assertThat(stopped.out()).contains("is now in " + files().get(0));
  }
}
