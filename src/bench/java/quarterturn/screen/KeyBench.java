package quarterturn.screen;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import quarterturn.Pty;

/**
 * From a key at a pseudo-terminal to the first bytes it is answered with, on the full screen; and,
 * as the machine's noise, the same for a program that only sends back what it gets. The most bytes
 * for one key are printed at the end.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class KeyBench {
  /** From the first prompt of the invented session to a reading. */
  private static final List<String> TO_A_READING = List.of("u", "\r", "2", "\r", "\u001b[B", "\r");

  private @Nullable Pty screen;
  private @Nullable Pty echo;
  private boolean typed;
  private int most;

  @Setup(Level.Trial)
  public void start() throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes = System.getProperty("java.class.path");
    String main = ScriptedMain.class.getName();
    Pty face = Pty.start(80, 24, Map.of(), List.of(java, "-cp", classes, main));
    face.await("Press u", 0);
    for (String key : TO_A_READING) {
      Thread.sleep(300);
      face.send(key);
    }
    screen = face;
    String same = "stty raw -echo; echo go; exec cat";
    echo = Pty.start(80, 24, Map.of(), List.of("sh", "-c", same));
    echo.await("go", 0);
    Thread.sleep(300);
  }

  @Benchmark
  public void keyToBytesOut() throws IOException, InterruptedException {
    typed = !typed;
    most = Math.max(most, answered(screen, typed ? "5" : "\u007f"));
  }

  @Benchmark
  public void noise() throws IOException, InterruptedException {
    answered(echo, "5");
  }

  private static int answered(@Nullable Pty at, String key)
      throws IOException, InterruptedException {
    Pty pty = Objects.requireNonNull(at);
    int before = pty.length();
    pty.send(key);
    pty.awaitMore(before);
    return pty.length() - before;
  }

  @TearDown(Level.Trial)
  public void end() {
    System.out.println("\nbytes for one key, at most: " + most);
    Objects.requireNonNull(screen).close();
    Objects.requireNonNull(echo).close();
  }
}
