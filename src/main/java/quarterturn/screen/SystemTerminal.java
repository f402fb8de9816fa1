package quarterturn.screen;

import java.io.IOException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Opens the terminal the program was started in. */
public final class SystemTerminal {
  private SystemTerminal() {}

  /**
   * Opens it through native calls only: no child process is started, neither to set it up nor to
   * ask what it can do, since the face needs no more than every ANSI terminal has.
   *
   * @throws IOException when there is no terminal
   */
  public static Terminal open() throws IOException {
    // Reads must block and end when the terminal goes away; JLine's timed reads never end. It takes
    // this as a system property only.
    System.setProperty(TerminalBuilder.PROP_NON_BLOCKING_READS, "false");
    try {
      return TerminalBuilder.builder()
          .system(true)
          .providers("jni")
          .exec(false)
          .dumb(false)
          .type("xterm")
          .build();
    } catch (IllegalStateException noTerminal) {
      throw new IOException("this is no terminal; use --plain", noTerminal);
    }
  }
}
