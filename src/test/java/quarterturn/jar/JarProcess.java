package quarterturn.jar;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import quarterturn.command.Captured;
import quarterturn.command.FastMain;

/** The packaged program as a process of its own, talked to over its pipes. */
final class JarProcess implements AutoCloseable {
  /** Far beyond what any answer takes, even on a busy machine. */
  private static final int PATIENCE_SECONDS = 60;

  private static final JsonMapper JSON = new JsonMapper();

  private final Process process;
  private final BlockingQueue<Optional<String>> lines = new LinkedBlockingQueue<>();
  private final StringBuffer out = new StringBuffer();
  private final StringBuffer err = new StringBuffer();
  private final List<Thread> readers = new ArrayList<>();

  /** How a run ended, and all it printed. */
  record Ran(int status, String out, String err) {
    List<JsonNode> json() {
      return out.lines().map(JarProcess::parse).toList();
    }
  }

  private JarProcess(Process process) {
    this.process = process;
    read(process.getInputStream(), out, lines);
    read(process.getErrorStream(), err, new LinkedBlockingQueue<>());
  }

  /** Starts the jar with these arguments. */
  static JarProcess start(List<String> args) throws IOException {
    return of(Packaged.program(args));
  }

  /** The jar on a clock that goes on where the last record in its data folder is. */
  static JarProcess later(List<String> args) throws IOException {
    List<String> words = new ArrayList<>(List.of("1"));
    words.addAll(args);
    return of(Packaged.test(FastMain.class, List.of(), words));
  }

  /** Starts a command. */
  static JarProcess of(List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "TERM"));
    builder.environment().putAll(Map.of("LC_ALL", "C.UTF-8", "TZ", "UTC"));
    return new JarProcess(builder.start());
  }

  /** Runs the jar to its end with {@code input} on standard input. */
  static Ran run(String input, String... args) throws IOException, InterruptedException {
    return run(input.getBytes(StandardCharsets.UTF_8), args);
  }

  /** Runs the jar to its end with bytes on standard input that need not be text. */
  static Ran run(byte[] input, String... args) throws IOException, InterruptedException {
    try (JarProcess jar = start(List.of(args))) {
      jar.write(input);
      return jar.end();
    }
  }

  /**
   * Runs the program to its end in this process with {@code input} on standard input, which takes a
   * tenth of the time.
   */
  static Ran inside(String input, String... args) {
    Captured ran = Captured.of(Clock.systemUTC(), input, args);
    return new Ran(ran.status(), ran.out(), ran.err());
  }

  private void read(InputStream from, StringBuffer all, BlockingQueue<Optional<String>> each) {
    Thread thread =
        new Thread(
            () -> {
              // Split at line feeds alone, so that any other control character shows.
              try (BufferedReader in =
                  new BufferedReader(new InputStreamReader(from, StandardCharsets.UTF_8))) {
                StringBuilder line = new StringBuilder();
                for (int c = in.read(); c >= 0; c = in.read()) {
                  all.append((char) c);
                  if (c == '\n') {
                    each.add(Optional.of(line.toString()));
                    line.setLength(0);
                  } else {
                    line.append((char) c);
                  }
                }
              } catch (IOException e) {
                // The pipe of a process that was killed.
              } finally {
                each.add(Optional.empty());
              }
            });
    thread.setDaemon(true);
    thread.start();
    readers.add(thread);
  }

  private static JsonNode parse(String line) {
    try {
      return JSON.readTree(line);
    } catch (IOException e) {
      throw new UncheckedIOException("no JSON line: " + line, e);
    }
  }

  /** The next line of standard output; fails where none comes. */
  String line() throws InterruptedException {
    Optional<String> line = lines.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (line == null) {
      throw new AssertionError("nothing was printed for " + PATIENCE_SECONDS + " s; " + all());
    }
    return line.orElseThrow(() -> new AssertionError("the output ended; " + all()));
  }

  /** Reads lines up to one that holds {@code text}. */
  String lineWith(String text) throws InterruptedException {
    String line = line();
    while (!line.contains(text)) {
      line = line();
    }
    return line;
  }

  /** The next line of standard output as a JSON object. */
  JsonNode prompt() throws InterruptedException {
    return parse(line());
  }

  /** Sends a line and does not wait. */
  void send(String line) throws IOException {
    OutputStream in = process.getOutputStream();
    in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  private void write(byte[] input) {
    try (OutputStream in = process.getOutputStream()) {
      in.write(input);
    } catch (IOException e) {
      // It ended without reading all of it; how it ended is what the test looks at.
    }
  }

  /** Ends its input and waits for the program to end by itself. */
  Ran end() throws IOException, InterruptedException {
    write(new byte[0]);
    return ended();
  }

  /** Waits for the program to end by itself. */
  Ran ended() throws InterruptedException {
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new AssertionError("the program did not end; " + all());
    }
    for (Thread reader : readers) {
      reader.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    }
    return new Ran(process.exitValue(), out.toString(), err.toString());
  }

  private String all() {
    return "standard output:\n" + out + "\nstandard error:\n" + err;
  }

  /** SIGTERM, as a system sends it when it shuts down. */
  void terminate() {
    process.toHandle().destroy();
  }

  /** SIGKILL; returns when the process is gone. */
  void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  @Override
  public void close() throws InterruptedException {
    kill();
  }
}
