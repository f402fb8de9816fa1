package quarterturn.screen.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Attributes.InputFlag;
import org.jline.terminal.Attributes.LocalFlag;
import org.jline.terminal.Terminal;
import org.jline.utils.NonBlockingReader;
import org.jspecify.annotations.Nullable;
import quarterturn.session.ExitStatus;

/**
 * The terminal in use by a full-screen face, to paint on and to read input from. However the face
 * ends (return, exception in any thread, Ctrl-C, a signal), the terminal is given back as it was
 * found.
 */
public final class Surface implements AutoCloseable {
  /** Milliseconds that an Esc waits for the rest of a sequence. */
  private static final long ESC_MILLIS = 60;

  /** Milliseconds that a dying process waits for the face to leave the session in order. */
  private static final long LAST_MILLIS = 2000;

  /** Milliseconds that a Ctrl-C may stay unread before another one ends the program at once. */
  private static final long HANGS_MILLIS = 1000;

  /** Milliseconds of a read, after which it checks whether the face has ended. */
  private static final long READ_MILLIS = 200;

  private static final String ENTER = "\u001b[?1049h\u001b[?25l\u001b[2J";
  private static final String EXIT = "\u001b[0m\u001b[?25h\u001b[?1049l";

  private final Terminal terminal;
  private final GatedOutput gate;
  private final Attributes found;
  private final BridgeTerminal bridge;
  private final boolean unicode;
  private final BlockingQueue<Input> inputs = new LinkedBlockingQueue<>();
  private final Queue<Input> ready = new ArrayDeque<>();
  private final KeyDecoder decoder = new KeyDecoder();
  private final Map<Terminal.Signal, Terminal.SignalHandler> handlers =
      new EnumMap<>(Terminal.Signal.class);
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread hook = new Thread(this::dying, "give the terminal back");
  private final Thread reader = new Thread(this::read, "read keys");
  private final Thread.@Nullable UncaughtExceptionHandler uncaught;
  private final Painter painter;
  private volatile long interruptedAt;
  private boolean whole = true;

  private Surface(Terminal terminal, Settings settings) throws IOException {
    this.terminal = terminal;
    gate = new GatedOutput(terminal.output());
    found = terminal.getAttributes();
    bridge = new BridgeTerminal(terminal, gate);
    unicode = settings.unicode() && terminal.encoding().equals(StandardCharsets.UTF_8);
    uncaught = Thread.getDefaultUncaughtExceptionHandler();
    painter = new Painter(bridge, settings.colour());
  }

  /**
   * Takes over the terminal.
   *
   * @param terminal the terminal from {@link SystemTerminal#open}, which is not closed
   */
  public static Surface open(Terminal terminal, Settings settings) throws IOException {
    Surface surface = new Surface(terminal, settings);
    surface.begin();
    return surface;
  }

  private void begin() throws IOException {
    Runtime.getRuntime().addShutdownHook(hook);
    Thread.setDefaultUncaughtExceptionHandler(this::broke);
    handle(Terminal.Signal.INT, this::interrupted);
    handle(Terminal.Signal.QUIT, Terminal.SignalHandler.SIG_IGN);
    handle(Terminal.Signal.TSTP, s -> inputs.add(new Input.Suspended()));
    handle(Terminal.Signal.CONT, s -> inputs.add(new Input.Continued()));
    handle(Terminal.Signal.WINCH, s -> inputs.add(new Input.Resized()));
    take();
    reader.setDaemon(true);
    reader.start();
  }

  private void handle(Terminal.Signal signal, Terminal.SignalHandler handler) {
    handlers.put(signal, terminal.handle(signal, handler));
  }

  private void take() throws IOException {
    gate.open(this::set);
    whole = true;
  }

  private void set(OutputStream out) throws IOException {
    terminal.setAttributes(raw());
    out.write(ENTER.getBytes(StandardCharsets.US_ASCII));
  }

  /**
   * Raw mode in which Ctrl-C and Ctrl-Z are still signals, so that they work while the face is
   * busy.
   */
  private Attributes raw() {
    Attributes raw = new Attributes(found);
    raw.setLocalFlags(EnumSet.of(LocalFlag.ICANON, LocalFlag.ECHO, LocalFlag.IEXTEN), false);
    raw.setInputFlags(EnumSet.of(InputFlag.IXON, InputFlag.ICRNL, InputFlag.INLCR), false);
    raw.setLocalFlag(LocalFlag.ISIG, true);
    raw.setControlChar(Attributes.ControlChar.VMIN, 1);
    raw.setControlChar(Attributes.ControlChar.VTIME, 0);
    return raw;
  }

  /**
   * Gives the terminal back as it was found. May be called from any thread, any number of times.
   */
  private void giveBack() {
    try {
      gate.shut(this::goodbye);
    } catch (IOException | RuntimeException gone) {
      // There is no terminal any more to give back.
      return;
    }
  }

  private void goodbye(OutputStream out) throws IOException {
    try {
      out.write(EXIT.getBytes(StandardCharsets.US_ASCII));
      out.flush();
    } finally {
      terminal.setAttributes(found);
    }
  }

  /**
   * Gives the terminal back and waits until the session was left in order, even if the first fails.
   */
  private void dying() {
    try {
      giveBack();
    } finally {
      waitForLeaving();
    }
  }

  private void waitForLeaving() {
    inputs.add(new Input.Over(ExitStatus.DONE));
    try {
      boolean inOrder = closed.await(LAST_MILLIS, TimeUnit.MILLISECONDS);
      if (!inOrder) {
        System.err.println("quarterturn: ended; what was answered so far is saved");
      }
    } catch (InterruptedException enough) {
      Thread.currentThread().interrupt();
    }
  }

  private void broke(Thread thread, Throwable cause) {
    giveBack();
    inputs.add(new Input.Broke(cause));
  }

  private void interrupted(Terminal.Signal signal) {
    // One more Ctrl-C, long after one that is still unread, means that the face hangs.
    Input over = new Input.Over(ExitStatus.INTERRUPTED);
    if (!inputs.contains(over)) {
      interruptedAt = System.nanoTime();
    } else if (System.nanoTime() - interruptedAt > TimeUnit.MILLISECONDS.toNanos(HANGS_MILLIS)) {
      giveBack();
      Runtime.getRuntime().halt(ExitStatus.INTERRUPTED);
    }
    inputs.add(over);
  }

  /**
   * Passes on input until the face ends. A read has a time limit, because one that waits for ever
   * would keep JLine from closing the terminal.
   */
  private void read() {
    NonBlockingReader reader = terminal.reader();
    try {
      int unit = reader.read(READ_MILLIS);
      while (unit != NonBlockingReader.EOF && closed.getCount() > 0) {
        if (unit >= 0) {
          inputs.add(new Input.Unit(unit));
        }
        unit = reader.read(READ_MILLIS);
      }
    } catch (IOException | IllegalStateException gone) {
      // Reported below, like an orderly end of input.
    }
    inputs.add(new Input.Over(ExitStatus.DONE));
  }

  /**
   * The next input, or null when none came within {@code wait}. The program may have been stopped
   * and continued meanwhile.
   */
  public @Nullable Input next(Duration wait) throws IOException, InterruptedException {
    Input input = awaited(wait);
    if (input instanceof Input.Continued) {
      repaintWhole();
    }
    // A picture that was on its way as the window changed may have come out garbled.
    whole |= input instanceof Input.Resized;
    return input instanceof Input.Suspended && suspend() ? new Input.Continued() : input;
  }

  private @Nullable Input awaited(Duration wait) throws InterruptedException {
    long until = System.nanoTime() + wait.toNanos();
    while (ready.isEmpty()) {
      long left = until - System.nanoTime();
      long patience = decoder.pending() ? TimeUnit.MILLISECONDS.toNanos(ESC_MILLIS) : left;
      Input input = inputs.poll(patience, TimeUnit.NANOSECONDS);
      if (input instanceof Input.Unit unit) {
        decoder.feed(unit.unit()).forEach(key -> ready.add(new Input.Pressed(key)));
      } else if (input != null) {
        return input;
      } else if (decoder.pending()) {
        decoder.giveUp().forEach(key -> ready.add(new Input.Pressed(key)));
      } else {
        return null;
      }
    }
    return ready.poll();
  }

  /** Drops keys pressed before the present view could be seen. */
  public void forgetKeys() {
    ready.removeIf(Input.Pressed.class::isInstance);
    inputs.removeIf(Input.Unit.class::isInstance);
    decoder.giveUp();
  }

  public int width() throws IOException {
    return bridge.getTerminalSize().getColumns();
  }

  public int height() throws IOException {
    return bridge.getTerminalSize().getRows();
  }

  public void paint(Canvas canvas) throws IOException {
    painter.paint(unicode ? canvas : canvas.ascii(), whole);
    whole = false;
  }

  /**
   * Sets the terminal's modes again, in case another program changed them, and paints everything
   * the next time.
   */
  public void repaintWhole() throws IOException {
    gate.whileOpen(this::set);
    whole = true;
  }

  /**
   * Gives the terminal back, stops the program, and takes the terminal again when continued.
   *
   * @return whether the program could be stopped here
   */
  private boolean suspend() throws IOException {
    giveBack();
    boolean stopped = Stop.here();
    take();
    return stopped;
  }

  private void waitForReader() {
    try {
      reader.join(2 * READ_MILLIS);
    } catch (InterruptedException enough) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    giveBack();
    handlers.forEach(terminal::handle);
    Thread.setDefaultUncaughtExceptionHandler(uncaught);
    closed.countDown();
    waitForReader();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException alreadyDying) {
      // The hook is what brought us here.
      return;
    }
  }
}
