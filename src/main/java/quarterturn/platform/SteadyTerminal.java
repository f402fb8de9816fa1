package quarterturn.platform;

import java.io.IOError;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.util.EnumSet;
import org.jline.terminal.Attributes;
import org.jline.terminal.Attributes.InputFlag;
import org.jline.terminal.Attributes.LocalFlag;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.AbstractPosixTerminal;
import org.jline.utils.Curses;
import org.jline.utils.FastBufferedOutputStream;
import org.jline.utils.InfoCmp;
import org.jline.utils.NonBlocking;
import org.jline.utils.NonBlockingInputStream;
import org.jline.utils.NonBlockingReader;

/**
 * JLine's terminal, which tells its window to bracket what is pasted, and gives that back with its
 * modes: at the end, when the program is killed, and while it is stopped.
 */
public final class SteadyTerminal extends AbstractPosixTerminal {
  public static final String BRACKETS = "\u001b[?2004h";
  public static final String NO_BRACKETS = "\u001b[?2004l";

  private static final String NAME = "quarterturn";

  private final Attributes found;
  private final NonBlockingInputStream input;
  private final OutputStream output;
  private final NonBlockingReader reader;
  private final PrintWriter writer;
  private final Thread closing = new Thread(this::closeAtTheEnd, "close the terminal");

  /** As it was seen last. */
  private volatile Size size = new Size(80, 24);

  SteadyTerminal(String type, SteadyPty pty, Charset charset) throws IOException {
    super(NAME, type, pty, charset, SignalHandler.SIG_DFL);
    input = NonBlocking.nonBlocking(NAME, pty.getSlaveInput());
    output = new FastBufferedOutputStream(pty.getSlaveOutput());
    reader = NonBlocking.nonBlocking(NAME, input, charset);
    writer = new PrintWriter(new OutputStreamWriter(output, charset));
    parseInfoCmp();
    Runtime.getRuntime().addShutdownHook(closing);
    found = getAttributes();
  }

  private void closeAtTheEnd() {
    try {
      close();
    } catch (IOException | RuntimeException gone) {
      // There is no terminal any more to give back.
      return;
    }
  }

  @Override
  public InputStream input() {
    return input;
  }

  @Override
  public OutputStream output() {
    return output;
  }

  @Override
  public NonBlockingReader reader() {
    return reader;
  }

  @Override
  public SignalHandler handle(Signal signal, SignalHandler handler) {
    SignalHandler before = handlers.put(signal, handler);
    if (before != handler) {
      boolean usual = handler == SignalHandler.SIG_DFL;
      SystemSignals.handle(signal.name(), usual ? null : () -> raise(signal));
    }
    return before == null ? SignalHandler.SIG_DFL : before;
  }

  /** What a full screen sends is known to its painter; to read a list of it would take a while. */
  @Override
  protected void parseInfoCmp() {
    if (!SystemTerminal.SCREEN.equals(getType())) {
      super.parseInfoCmp();
    }
  }

  /** Without this a Ctrl-Z would leave the shell with this program's modes. */
  void stopsInOrder() {
    handle(Signal.TSTP, signal -> stop());
  }

  private void stop() {
    Attributes now = getAttributes();
    writer().write(NO_BRACKETS);
    writer().flush();
    setAttributes(found);
    Stop.here();
    setAttributes(now);
    writer().write(BRACKETS);
    writer().flush();
  }

  /**
   * JLine closes it by itself when the program is told to end. What other threads still do to it
   * then has no effect, rather than to end them by a fault; so where its window was closed.
   */
  @Override
  protected void checkClosed() {}

  @Override
  public PrintWriter writer() {
    return closed ? new PrintWriter(Writer.nullWriter()) : writer;
  }

  @Override
  public boolean puts(InfoCmp.Capability capability, Object... params) {
    return whole(this, capability, params);
  }

  /**
   * Writes a sequence in one piece, since whoever is told that the program goes on writes beside
   * the one who reads; false where the terminal has none.
   */
  public static boolean whole(Terminal terminal, InfoCmp.Capability capability, Object... params) {
    String sequence = terminal.getStringCapability(capability);
    if (sequence == null) {
      return false;
    }
    terminal.writer().write(Curses.tputs(sequence, params));
    return true;
  }

  @Override
  public Size getSize() {
    try {
      size = closed ? size : super.getSize();
    } catch (IOError gone) {
      return size; // whoever writes or reads next finds that out too
    }
    return size;
  }

  @Override
  public Attributes getAttributes() {
    return closed ? new Attributes(found) : super.getAttributes();
  }

  @Override
  public void setAttributes(Attributes attributes) {
    if (!closed) {
      super.setAttributes(attributes);
    }
  }

  @Override
  public Attributes enterRawMode() {
    Attributes before = getAttributes();
    setAttributes(raw(before));
    return before;
  }

  /**
   * Raw mode in which Ctrl-C and Ctrl-Z are still signals, so that they work while the face is
   * busy, and a read waits until there is something.
   */
  public static Attributes raw(Attributes found) {
    Attributes raw = new Attributes(found);
    raw.setLocalFlags(EnumSet.of(LocalFlag.ICANON, LocalFlag.ECHO, LocalFlag.IEXTEN), false);
    raw.setInputFlags(EnumSet.of(InputFlag.IXON, InputFlag.ICRNL, InputFlag.INLCR), false);
    raw.setLocalFlag(LocalFlag.ISIG, true);
    raw.setControlChar(Attributes.ControlChar.VMIN, 1);
    raw.setControlChar(Attributes.ControlChar.VTIME, 0);
    return raw;
  }

  @Override
  protected void doClose() throws IOException {
    writer.write(NO_BRACKETS);
    writer.flush();
    for (Signal signal : Signal.values()) {
      handle(signal, SignalHandler.SIG_DFL);
    }
    super.doClose();
    reader.close();
    try {
      Runtime.getRuntime().removeShutdownHook(closing);
    } catch (IllegalStateException alreadyDying) {
      // It is what brought us here.
      return;
    }
  }
}
