package quarterturn.rehearsal.life;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.line.AutoSource;
import quarterturn.line.LineFace;
import quarterturn.line.LineSource;
import quarterturn.line.PipeSource;
import quarterturn.script.AutoLines;
import quarterturn.script.ScriptFace;
import quarterturn.unit.Dates;

/**
 * Whole lives of an instrument never show a turn that breaks a limit of safety/limits.yaml, as the
 * simulated rod's true history counts it.
 */
@Tag("slow")
class LifeTest {
  /** A memory file system where there is one, since every answer is forced to disk. */
  private static final Path MEMORY = Path.of("/dev/shm");

  /** In every run; with ten times the draws, all two thousand. */
  private static final int LIVES = 60;

  private static final int ALL = 2000;

  /** The bench without a face, typed lines and JSON lines; what they print is read elsewhere. */
  static final List<Channel> CHANNELS =
      List.of(
          Channel.BENCH,
          player -> {
            PrintWriter out = new PrintWriter(Writer.nullWriter());
            LineSource place = new PipeSource(Reader.nullReader(), out, false);
            LineFace.run(
                player.bench(), new AutoSource(place, out, player), out, new Dates(ZoneOffset.UTC));
          },
          player ->
              new ScriptFace(
                      new AutoLines(player), new PrintStream(OutputStream.nullOutputStream()))
                  .run(player.bench()));

  @TempDir static Path folder;
  private static LifeRules rules;

  @BeforeAll
  static void read() throws Exception {
    rules = LifeRules.of("relief", folder.resolve("rules"));
  }

  private static Life.Lived lived(long seed) {
    try {
      Path in =
          Files.isWritable(MEMORY)
              ? Files.createTempDirectory(MEMORY, "life")
              : Files.createTempDirectory(folder, "life");
      try {
        return Life.of(seed, in, rules, CHANNELS);
      } catch (RuntimeException e) {
        throw new IllegalStateException("life " + seed, e);
      } finally {
        remove(in);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void remove(Path in) throws IOException {
    try (Stream<Path> files = Files.walk(in)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(file);
      }
    }
  }

  @Test
  void noLifeBreaksALimit() {
    int lives = Integer.getInteger("quarterturn.times", 1) > 1 ? ALL : LIVES;
    List<Life.Lived> all = IntStream.range(0, lives).parallel().mapToObj(LifeTest::lived).toList();
    for (int seed = 0; seed < lives; seed++) {
      Life.Lived life = all.get(seed);
      assertWithMessage("life " + seed + "\n" + String.join("\n", life.lines()))
          .that(life.breaches())
          .isEmpty();
    }
    // Lives in which nothing is turned would prove nothing.
    assertThat(all.stream().mapToInt(Life.Lived::turns).sum()).isAtLeast(3 * lives);
    assertThat(all.stream().mapToInt(Life.Lived::sessions).sum()).isAtLeast(3 * lives);
  }

  @Test
  void theSameSeedGivesTheSameLife() {
    assertThat(withoutNames(lived(7))).isEqualTo(withoutNames(lived(7)));
  }

  /** The lines without the random ends of the sessions' names. */
  private static List<String> withoutNames(Life.Lived life) {
    return life.lines().stream()
        .map(line -> line.replaceAll("relief-[0-9a-z]{4}", "relief"))
        .toList();
  }
}
