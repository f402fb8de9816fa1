package quarterturn.screen.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.utils.NonBlocking;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.SteadyTerminal;
import quarterturn.platform.Stop;
import quarterturn.platform.SystemTerminal;
import quarterturn.session.ExitStatus;

/**
 * The terminal in use by a full-screen face, to paint on and to read input from. However the face
 * ends (return, exception in any thread, Ctrl-C, a signal), the terminal is given back as it was
 * found.
 */
public final class Surface implements AutoCloseable {
  /** Milliseconds that a dying process waits for the face to leave the session in order. */
  private static final long LAST_MILLIS = 2000;

  /** Milliseconds that a Ctrl-C may stay unread before another one ends the program at once. */
  private static final long HANGS_MILLIS = 1000;

  /** Milliseconds of a read, after which it checks whether the face has ended. */
  private static final long READ_MILLIS = 50;

  /** Milliseconds after which it is painted even though more keys wait. */
  private static final long UNPAINTED_MILLIS = 100;

  private static final String ENTER = "\u001b[?1049h\u001b[?25l\u001b[2J" + SteadyTerminal.BRACKETS;
  private static final String EXIT =
      SteadyTerminal.NO_BRACKETS + "\u001b[0m\u001b[?25h\u001b[?1049l";

  private final Terminal terminal;
  private final GatedOutput gate;
  private final Attributes found;
  private final BridgeTerminal bridge;
  private final boolean unicode;
  private final Inputs inputs = new Inputs();
  private final Map<Terminal.Signal, Terminal.SignalHandler> handlers =
      new EnumMap<>(Terminal.Signal.class);
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread hook = new Thread(this::dying, "give the terminal back");
  private final Thread reader = new Thread(this::read, "read keys");
  private final Thread.@Nullable UncaughtExceptionHandler uncaught;
  private final Painter painter;
  private volatile long interruptedAt;
  private boolean whole = true;
  private boolean again;
  private long paintedAt;

  private Surface(Terminal terminal, Settings settings) throws IOException {
    this.terminal = terminal;
    gate = new GatedOutput(terminal.output());
    found = terminal.getAttributes();
    bridge = new BridgeTerminal(terminal, gate);
    unicode = settings.unicode() && terminal.encoding().equals(StandardCharsets.UTF_8);
    uncaught = Thread.getDefaultUncaughtExceptionHandler();
    painter = new Painter(bridge, settings.colour());
  }

  /** Makes ready what is the same for every terminal; else the first to be opened waits for it. */
  public static void prepare() {
    Painter.prepare();
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
    terminal.setAttributes(SteadyTerminal.raw(found));
    out.write(ENTER.getBytes(StandardCharsets.US_ASCII));
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
    inputs.addFirst(new Input.Over(ExitStatus.DONE));
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
    inputs.addFirst(new Input.Broke(cause));
  }

  private void interrupted(Terminal.Signal signal) {
    // One more Ctrl-C, long after one that is still unread, means that the face hangs.
    Input over = new Input.Over(ExitStatus.INTERRUPTED);
    if (!inputs.has(over)) {
      interruptedAt = System.nanoTime();
    } else if (System.nanoTime() - interruptedAt > TimeUnit.MILLISECONDS.toNanos(HANGS_MILLIS)) {
      giveBack();
      Runtime.getRuntime().halt(ExitStatus.INTERRUPTED);
    }
    // Whatever else was typed or pasted comes too late.
    inputs.addFirst(over);
  }

  /**
   * Passes on input until the face ends. A read has a time limit, because one that waits for ever
   * would keep JLine from closing the terminal.
   */
  private void read() {
    try {
      InputStream in = terminal.input();
      Units units = new Units(NonBlocking.nonBlocking("keys", in), terminal.encoding());
      String text = units.read(READ_MILLIS);
      while (text != null && closed.getCount() > 0) {
        if (!text.isEmpty()) {
          inputs.add(new Input.Sent(text));
        }
        text = units.read(READ_MILLIS);
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
  public @Nullable Input next(Duration wait) throws InterruptedException {
    Input input = inputs.next(wait);
    if (input instanceof Input.Continued) {
      repaintWhole();
    }
    // A picture that was on its way as the window changed may have come out garbled.
    whole |= input instanceof Input.Resized;
    try {
      return input instanceof Input.Suspended && suspend() ? new Input.Continued() : input;
    } catch (IOException gone) {
      return new Input.Over(ExitStatus.DONE);
    }
  }

  /** Drops keys pressed before the present view could be seen. */
  public void forgetKeys() {
    inputs.forgetKeys();
  }

  public int width() throws IOException {
    return bridge.getTerminalSize().getColumns();
  }

  public int height() throws IOException {
    return bridge.getTerminalSize().getRows();
  }

  /** Whether to paint: nothing that was typed waits, or it was not painted for a while. */
  public boolean due() {
    long unpainted = System.nanoTime() - paintedAt;
    return inputs.none() || unpainted > TimeUnit.MILLISECONDS.toNanos(UNPAINTED_MILLIS);
  }

  /**
   * Paints a view.
   *
   * @throws IOException when the terminal is gone
   */
  public void paint(Canvas canvas) throws IOException {
    if (again) {
      gate.whileOpen(this::set);
      again = false;
    }
    painter.paint(unicode ? canvas : canvas.ascii(), whole);
    whole = false;
    paintedAt = System.nanoTime();
  }

  /**
   * Paints everything the next time, and sets the terminal's modes again before, in case another
   * program changed them.
   */
  public void repaintWhole() {
    again = true;
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
