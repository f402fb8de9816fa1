package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.reader.impl.LineReaderImpl;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jspecify.annotations.Nullable;

/** A source of lines typed at a terminal, with history and completion. */
public final class TerminalSource implements LineSource, AutoCloseable {
  private List<String> kept = List.of();
  private final Terminal terminal;
  private final LineReader shown;
  private final CountDownLatch stopped = new CountDownLatch(1);

  /** What was typed when a reading was broken off, by its prompt. */
  private final Map<String, String> begun = new HashMap<>();

  private volatile LineReader reader;
  private List<String> offered = List.of();

  /** A source of lines typed at {@code terminal}, which is closed with this source. */
  TerminalSource(Terminal terminal) throws IOException {
    this.terminal = terminal;
    this.shown = reader(false);
    this.reader = shown;
    // What is typed ahead is not shown before it is known who may see it.
    terminal.enterRawMode();
    if (!dumb()) {
      terminal.writer().write(LineReaderImpl.BRACKETED_PASTE_ON);
      terminal.flush();
    }
    terminal.handle(Signal.INT, signal -> stopped.countDown());
  }

  /** A reader with a history of its own, and with whatever else it remembers of typed lines. */
  private LineReader reader(boolean cleared) throws IOException {
    // Quotes and backslashes mean nothing here: an inch is typed as a quote.
    DefaultParser parser = new DefaultParser();
    parser.setQuoteChars(new char[0]);
    parser.setEscapeChars(new char[0]);
    LineEditor editor = new LineEditor(terminal);
    editor.setParser(parser);
    editor.getWidgets().put(LineReader.CALLBACK_INIT, this::stopAtOnce);
    editor.setCompleter(
        (r, line, candidates) -> offered.forEach(word -> candidates.add(new Candidate(word))));
    editor.option(LineReader.Option.DISABLE_EVENT_EXPANSION, true);
    editor.option(LineReader.Option.BRACKETED_PASTE, !dumb());
    editor.option(LineReader.Option.ERASE_LINE_ON_FINISH, cleared);
    return editor;
  }

  /** A Ctrl-C that came before the editor saw to it. */
  private boolean stopAtOnce() {
    if (stopped.getCount() == 0) {
      Thread.currentThread().interrupt();
    }
    return true;
  }

  private boolean dumb() {
    return terminal.getType().startsWith(Terminal.TYPE_DUMB);
  }

  /** The writer to this terminal. */
  public PrintWriter out() {
    return terminal.writer();
  }

  @Override
  public @Nullable String readLine(String prompt, List<String> words)
      throws IOException, StopKeyException {
    try {
      return readLine(prompt, words, Seen.SHOWN, () -> false);
    } catch (ChangedException e) {
      throw new IllegalStateException("nothing could change", e);
    }
  }

  @Override
  public @Nullable String readLine(
      String prompt, List<String> words, Seen seen, BooleanSupplier changed)
      throws IOException, StopKeyException, ChangedException {
    if (stopped.getCount() == 0) {
      throw new StopKeyException();
    }
    offered = words;
    // What others are not to see is not remembered either.
    LineReader now = seen == Seen.CLEARED ? reader(true) : shown;
    reader = now;
    try (BrokenOff looks = new BrokenOff(changed)) {
      try {
        Character mask = seen == Seen.MASKED ? '*' : null;
        String line = now.readLine(prompt, null, mask, begun.remove(prompt));
        looks.over();
        // A Ctrl-C that came with the end of the line comes before it.
        if (Thread.interrupted()) {
          throw new StopKeyException();
        }
        return line;
      } catch (EndOfFileException e) {
        return null;
      } catch (UserInterruptException e) {
        // The key interrupts the reading thread; what is written after it must not be cut short.
        if (!looks.over()) {
          Thread.interrupted();
          throw new StopKeyException();
        }
        begun.put(prompt, e.getPartialLine());
        throw new ChangedException();
      }
    } finally {
      reader = shown;
    }
  }

  @Override
  public boolean begin(String prompt, String text) {
    begun.put(prompt, text);
    return true;
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
    if (!dumb()) {
      terminal.writer().write(LineReaderImpl.BRACKETED_PASTE_OFF);
    }
    terminal.close();
  }
}
