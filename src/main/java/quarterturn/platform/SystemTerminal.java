package quarterturn.platform;

import java.io.IOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.jni.JniNativePty;
import org.jline.terminal.impl.jni.JniTerminalProvider;
import org.jline.terminal.spi.SystemStream;
import org.jline.utils.InfoCmp;

/** Opens the terminal the program was started in. */
public final class SystemTerminal {
  /** Terminal type for lines: what every ANSI terminal can do, so that none has to be looked up. */
  private static final String LINES = "xterm";

  /** Terminal type for a full screen, where Lanterna knows what to send and JLine is not asked. */
  static final String SCREEN = "screen";

  /** Kept, since a logger that nobody holds forgets that it is silent. */
  private static final Logger JLINE = Logger.getLogger("org.jline");

  static {
    // What goes wrong is said in words of the program's own.
    JLINE.setLevel(Level.OFF);
  }

  private SystemTerminal() {}

  /**
   * Opens the terminal for a full screen, through native calls only, without a child process.
   *
   * @throws IOException when input or output is no terminal
   */
  public static Terminal open() throws IOException {
    return open(SCREEN);
  }

  private static Terminal open(String type) throws IOException {
    try {
      JniTerminalProvider provider = new JniTerminalProvider();
      boolean here =
          provider.isSystemStream(SystemStream.Input)
              && provider.isSystemStream(SystemStream.Output);
      if (!here) {
        throw new IOException("this is no terminal; use --plain");
      }
      return provider.isPosixSystemStream(SystemStream.Output) ? posix(provider, type) : windows();
    } catch (UnsupportedOperationException | IllegalStateException | LinkageError noTerminal) {
      // The first where the native part can't be unpacked, as into a full temporary folder.
      throw new IOException("this terminal can't be opened; use --plain", noTerminal);
    }
  }

  /** Opens it for lines that are typed: other than on a full screen, a Ctrl-Z just stops. */
  public static Terminal forLines() throws IOException {
    // Else JLine starts infocmp to ask, even for a type whose answer it carries with it.
    InfoCmp.setLoadedInfoCmp(LINES, InfoCmp.getDefaultInfoCmp(LINES));
    Terminal terminal = open(LINES);
    if (terminal instanceof SteadyTerminal steady) {
      steady.stopsInOrder();
    }
    return terminal;
  }

  private static Terminal posix(JniTerminalProvider provider, String type) throws IOException {
    JniNativePty pty = (JniNativePty) provider.current(SystemStream.Output);
    return new SteadyTerminal(type, new SteadyPty(pty), Encodings.ofTerminal());
  }

  private static Terminal windows() throws IOException {
    return TerminalBuilder.builder()
        .system(true)
        .providers("jni")
        .exec(false)
        .dumb(false)
        .encoding(Encodings.ofTerminal())
        .build();
  }
}
