package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.TerminalBuilder;
import org.jspecify.annotations.Nullable;

/** A source of lines typed at a terminal, with history and completion. */
public final class TerminalSource implements LineSource, AutoCloseable {
  private List<String> kept = List.of();
  private final Terminal terminal;
  private final LineReader reader;
  private final CountDownLatch stopped = new CountDownLatch(1);
  private List<String> offered = List.of();

  /** A source of lines typed at {@code terminal}, which is closed with this source. */
  TerminalSource(Terminal terminal) {
    this.terminal = terminal;
    // Quotes and backslashes mean nothing here: an inch is typed as a quote.
    DefaultParser parser = new DefaultParser();
    parser.setQuoteChars(new char[0]);
    parser.setEscapeChars(new char[0]);
    this.reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser(parser)
            .completer(
                (r, line, candidates) ->
                    offered.forEach(word -> candidates.add(new Candidate(word))))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .build();
    terminal.handle(Signal.INT, signal -> stopped.countDown());
  }

  /**
   * A source at the terminal this program was started at, driven without a child process.
   *
   * @throws IOException when there is none, or it can't be driven
   */
  public static TerminalSource open() throws IOException {
    try {
      return new TerminalSource(
          TerminalBuilder.builder()
              .provider("jni")
              .system(true)
              .systemOutput(TerminalBuilder.SystemOutput.SysOut)
              .dumb(false)
              .build());
    } catch (IllegalStateException | LinkageError e) {
      throw new IOException("this is no terminal that can be typed at", e);
    }
  }

  /** The writer to this terminal. */
  public PrintWriter out() {
    return terminal.writer();
  }

  @Override
  public @Nullable String readLine(String prompt, List<String> words)
      throws IOException, StopKeyException {
    offered = words;
    return read(prompt, null);
  }

  @Override
  public @Nullable String readHidden(String prompt) throws IOException, StopKeyException {
    return read(prompt, '*');
  }

  @Override
  public void aside(String line) {
    reader.printAbove(line);
  }

  private @Nullable String read(String prompt, @Nullable Character mask) throws StopKeyException {
    if (stopped.getCount() == 0) {
      throw new StopKeyException();
    }
    try {
      return reader.readLine(prompt, mask);
    } catch (EndOfFileException e) {
      return null;
    } catch (UserInterruptException e) {
      // The key interrupts the reading thread; what is written after it must not be cut short.
      Thread.interrupted();
      throw new StopKeyException();
    }
  }

  @Override
  public void keep(List<String> parts) {
    kept = List.copyOf(parts);
  }

  @Override
  public List<String> kept() {
    List<String> parts = kept;
    kept = List.of();
    return parts;
  }

  @Override
  public void pause(Duration time) throws StopKeyException {
    try {
      if (stopped.await(time.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new StopKeyException();
      }
    } catch (InterruptedException e) {
      throw new StopKeyException();
    }
  }

  @Override
  public void meanwhile(PrintWriter out, List<String> lines) {
    reader.printAbove(String.join("\n", lines));
  }

  @Override
  public boolean typedByHand() {
    return true;
  }

  @Override
  public int width() {
    return terminal.getWidth() > 0 ? terminal.getWidth() : 80;
  }

  @Override
  public void close() throws IOException {
    terminal.close();
  }
}
