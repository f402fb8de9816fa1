package quarterturn.soak;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterturn.Pty;

/**
 * A program at a pseudo-terminal, started by a shell that looks at the terminal's modes before and
 * after. The terminal does not echo by itself, so that all that comes is the program's.
 */
final class PtyChild extends Child {
  /** What the shell says where the modes are not as they were. */
  static final String CHANGED = "MODES CHANGED";

  private static final String SHELL =
      "trap : INT HUP TERM QUIT; stty -echo; before=$(stty -g); (BEFOREexec \"$@\"); status=$?;"
          + " after=$(stty -g); if [ -n \"$after\" ] && [ \"$before\" != \"$after\" ];"
          + " then echo \""
          + CHANGED
          + " $before $after\"; fi; exit $status";

  private final Pty pty;

  private PtyChild(Pty pty) {
    this.pty = pty;
  }

  static PtyChild start(int columns, int rows, String before, Path home, List<String> command)
      throws IOException {
    List<String> all = new ArrayList<>(List.of("sh", "-c", SHELL.replace("BEFORE", before), "sh"));
    all.addAll(command);
    return new PtyChild(
        Pty.start(columns, rows, Map.of("XDG_CONFIG_HOME", home.toString(), "TZ", "UTC"), all));
  }

  @Override
  void write(byte[] bytes) throws IOException {
    pty.send(bytes);
  }

  @Override
  int length() {
    return pty.length();
  }

  @Override
  String out() {
    return pty.sent();
  }

  @Override
  boolean ended(Duration most) throws InterruptedException {
    return pty.ended(most);
  }

  @Override
  int status() throws InterruptedException {
    return pty.exitStatus();
  }

  @Override
  Optional<ProcessHandle> program() {
    // The last that the shell started: the program, once the shell's own short ones are over.
    return pty.running().stream()
        .flatMap(ProcessHandle::descendants)
        .filter(one -> one.info().command().orElse("").endsWith("java"))
        .findFirst();
  }

  @Override
  void resize(int columns, int rows) {
    pty.resize(columns, rows);
  }

  @Override
  void hangUp() throws IOException {
    pty.hangUp();
  }

  /** What ends input at a terminal: a key. */
  @Override
  void endInput() {
    send("\u0004");
  }

  @Override
  public void close() {
    super.close();
    pty.close();
  }
}
