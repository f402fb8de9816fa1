package quarterturn.screen.terminal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.jline.builtins.ScreenTerminal;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.InfoCmp;

/** A terminal emulator that shows what is sent to it, and whose window can be resized. */
public final class Emulated implements AutoCloseable {
  private static final String TYPE = "xterm";
  private static final Settings COLOURED = new Settings(true, true);

  private final ByteArrayOutputStream sent = new ByteArrayOutputStream();
  private final LineDisciplineTerminal terminal;
  private final Surface surface;
  private final ByteArrayOutputStream sentAnew = new ByteArrayOutputStream();
  private final LineDisciplineTerminal anew;
  private ScreenTerminal screen;

  public Emulated(int width, int height) throws IOException {
    terminal = terminal(sent, width, height);
    anew = terminal(sentAnew, width, height);
    screen = new ScreenTerminal(width, height);
    surface = Surface.open(terminal, COLOURED);
  }

  private static LineDisciplineTerminal terminal(ByteArrayOutputStream out, int width, int height)
      throws IOException {
    InfoCmp.setLoadedInfoCmp(TYPE, InfoCmp.getDefaultInfoCmp(TYPE));
    LineDisciplineTerminal made =
        new LineDisciplineTerminal("emulated", TYPE, out, StandardCharsets.UTF_8);
    made.setSize(new Size(width, height));
    return made;
  }

  public void paint(Canvas canvas) throws IOException {
    surface.paint(canvas);
    show();
  }

  /** Paints what was meant for another size; the emulator fails where a terminal cuts it off. */
  public void paintLate(Canvas canvas) throws IOException {
    try {
      paint(canvas);
    } catch (IndexOutOfBoundsException beyond) {
      sent.reset();
      screen.write("\u001b[H");
    }
  }

  private void show() {
    screen.write(sent.toString(StandardCharsets.UTF_8));
    sent.reset();
  }

  /**
   * Gives the window another size. What it then shows is rubbish, as where a terminal wraps the
   * lines of the old window in the new one.
   */
  public void resize(int width, int height) throws IOException, InterruptedException {
    screen = new ScreenTerminal(width, height);
    screen.write("\u001b#8\u001b[7m");
    terminal.setSize(new Size(width, height));
    terminal.raise(Terminal.Signal.WINCH);
    Input input = surface.next(Duration.ofSeconds(10));
    if (!(input instanceof Input.Resized)) {
      throw new AssertionError("the change of size was not noticed: " + input);
    }
  }

  public int width() throws IOException {
    return surface.width();
  }

  public int height() throws IOException {
    return surface.height();
  }

  /** The window's cells, each with its letter and how it is inked. */
  public long[] cells() throws IOException {
    return cells(screen, width(), height());
  }

  /** The cells of a new window after its first painting. */
  public long[] fresh(Canvas canvas) throws IOException {
    anew.setSize(new Size(canvas.width(), canvas.height()));
    sentAnew.reset();
    new Painter(new BridgeTerminal(anew, anew.output()), true).paint(canvas, true);
    ScreenTerminal window = new ScreenTerminal(canvas.width(), canvas.height());
    window.write(sentAnew.toString(StandardCharsets.UTF_8));
    return cells(window, canvas.width(), canvas.height());
  }

  private static long[] cells(ScreenTerminal screen, int width, int height) {
    long[] cells = new long[width * height];
    screen.dump(cells, 0, 0, height, width, new int[2]);
    return cells;
  }

  /** The text of cells, a line for each row. */
  public static String text(long[] cells, int width) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      int letter = (int) (cells[i] & 0xffff);
      out.appendCodePoint(letter == 0 ? ' ' : letter);
      out.append((i + 1) % width == 0 ? "\n" : "");
    }
    return out.toString().replaceAll(" +\n", "\n");
  }

  @Override
  public void close() throws IOException {
    surface.close();
    terminal.close();
    anew.close();
  }
}
