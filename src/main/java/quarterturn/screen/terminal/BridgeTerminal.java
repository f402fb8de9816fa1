package quarterturn.screen.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.OutputStream;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;

/**
 * Lanterna's drawing on a JLine terminal. JLine owns size, modes and signals, so that neither a
 * child process nor a query to the terminal is needed; {@link Surface} enters and leaves the
 * alternate screen, since it has to be able to at any moment.
 */
final class BridgeTerminal extends ANSITerminal {
  private static final int COLUMNS = 80;
  private static final int ROWS = 24;

  private final Terminal terminal;

  BridgeTerminal(Terminal terminal, OutputStream out) {
    super(terminal.input(), out, terminal.encoding());
    this.terminal = terminal;
  }

  @Override
  protected TerminalSize findTerminalSize() {
    Size size = terminal.getSize();
    int columns = size.getColumns() > 0 ? size.getColumns() : COLUMNS;
    int rows = size.getRows() > 0 ? size.getRows() : ROWS;
    return new TerminalSize(columns, rows);
  }

  /** Sends the text and nothing else; Lanterna's own way adds a NUL to some characters. */
  @Override
  public void putString(String text) throws IOException {
    writeToTerminal(text.getBytes(terminal.encoding()));
  }

  @Override
  public void enterPrivateMode() {}

  @Override
  public void exitPrivateMode() {}
}
