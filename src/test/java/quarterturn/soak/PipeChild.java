package quarterturn.soak;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** A program that is talked to over pipes. */
final class PipeChild extends Child {
  private final Process process;
  private final StringBuffer out = new StringBuffer();
  private final List<Thread> readers = new ArrayList<>();

  private PipeChild(Process process) {
    this.process = process;
    read(process.getInputStream());
    read(process.getErrorStream());
  }

  /**
   * Starts a command by way of a shell.
   *
   * @param before what the shell does first, such as setting a limit
   * @param to where standard output goes, or the empty text for the pipe
   */
  static PipeChild start(String before, String to, Path home, List<String> command)
      throws IOException {
    List<String> all = new ArrayList<>(List.of("sh", "-c"));
    all.add(before + "exec \"$@\"" + (to.isEmpty() ? "" : " >" + to));
    all.add("sh");
    all.addAll(command);
    ProcessBuilder builder = new ProcessBuilder(all);
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "TERM"));
    builder
        .environment()
        .putAll(Map.of("LC_ALL", "C.UTF-8", "TZ", "UTC", "XDG_CONFIG_HOME", home.toString()));
    return new PipeChild(builder.start());
  }

  private void read(InputStream from) {
    Thread thread =
        new Thread(
            () -> {
              try (Reader in = new InputStreamReader(from, StandardCharsets.UTF_8)) {
                char[] buffer = new char[1 << 13];
                for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                  out.append(buffer, 0, read);
                }
              } catch (IOException gone) {
                // The pipe of a program that has gone, or was closed on purpose.
              }
            });
    thread.setDaemon(true);
    thread.start();
    readers.add(thread);
  }

  @Override
  void write(byte[] bytes) throws IOException {
    OutputStream in = process.getOutputStream();
    in.write(bytes);
    in.flush();
  }

  @Override
  int length() {
    return out.length();
  }

  @Override
  String out() {
    return out.toString();
  }

  @Override
  boolean ended(Duration most) throws InterruptedException {
    return process.waitFor(most.toMillis(), TimeUnit.MILLISECONDS);
  }

  @Override
  int status() throws InterruptedException {
    for (Thread reader : readers) {
      reader.join(2000);
    }
    return process.exitValue();
  }

  @Override
  Optional<ProcessHandle> program() {
    return process.isAlive() ? Optional.of(process.toHandle()) : Optional.empty();
  }

  @Override
  void hangUp() throws IOException {
    process.getInputStream().close();
  }

  @Override
  void endInput() {
    later(() -> process.getOutputStream().close());
  }
}
