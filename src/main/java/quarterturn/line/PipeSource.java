package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;
import quarterturn.unit.TypedLines;

/**
 * A source of lines from a pipe, or from a terminal that can do nothing but print.
 *
 * <p>What comes from a pipe is printed after the prompt, since no terminal shows it.
 */
public final class PipeSource implements LineSource {
  private static final int LONGEST = 4096;

  /** Rows of a terminal, and some more. */
  private static final int SCREEN = 60;

  private final TypedLines in;
  private final PrintWriter out;
  private final boolean byHand;
  private volatile String pending = "";
  private int count;
  private List<String> kept = List.of();

  /**
   * A source of the lines of {@code in}.
   *
   * @param byHand whether a person types at a terminal that shows what is typed
   */
  public PipeSource(Reader in, PrintWriter out, boolean byHand) {
    this.in = new TypedLines(in, LONGEST);
    this.out = out;
    this.byHand = byHand;
  }

  @Override
  public @Nullable String readLine(String prompt, List<String> words) throws IOException {
    ask(prompt);
    return taken(Seen.SHOWN);
  }

  @Override
  public @Nullable String readLine(
      String prompt, List<String> words, Seen seen, BooleanSupplier changed)
      throws IOException, StopKeyException, ChangedException {
    ask(prompt);
    try {
      while (!in.comes(LOOK)) {
        if (changed.getAsBoolean()) {
          pending = "";
          out.println();
          throw new ChangedException();
        }
      }
    } catch (InterruptedException e) {
      throw new StopKeyException();
    }
    return taken(seen);
  }

  @Override
  public @Nullable String await(BooleanSupplier changed, Urgent urgent)
      throws IOException, StopKeyException {
    try {
      while (!changed.getAsBoolean()) {
        TypedLines.Line line = in.urgent(LOOK, l -> urgent.is(l.text(), in.keeps()));
        if (line != null) {
          return line.text();
        } else if (in.spent()) {
          return "quit"; // nobody is left who could answer what comes next
        }
      }
      return null;
    } catch (InterruptedException e) {
      throw new StopKeyException();
    }
  }

  @Override
  public @Nullable String await(Duration most, BooleanSupplier changed, Urgent urgent)
      throws IOException, StopKeyException {
    long until = System.nanoTime() + most.toNanos();
    return await(() -> System.nanoTime() - until >= 0 || changed.getAsBoolean(), urgent);
  }

  private void ask(String prompt) {
    out.print(prompt);
    out.flush();
    pending = prompt;
  }

  private @Nullable String taken(Seen seen) throws IOException {
    TypedLines.Line line = in.next();
    pending = "";
    count++;
    if (line == null) {
      out.println();
      return null;
    }
    if (!byHand) {
      out.println(seen == Seen.SHOWN ? Printable.of(line.text()) : "(not shown)");
    } else if (seen != Seen.SHOWN) {
      // This terminal can't take back what it showed; it goes out of view.
      out.print("\n".repeat(SCREEN));
      out.flush();
    }
    return line.text();
  }

  @Override
  public int scriptLine() {
    return byHand ? 0 : count;
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
      Thread.sleep(time.toMillis());
    } catch (InterruptedException e) {
      throw new StopKeyException();
    }
  }

  /** Prints lines below a prompt that waits for an answer, and then the prompt again. */
  @Override
  public void meanwhile(PrintWriter out, List<String> lines) {
    String prompt = pending;
    if (!prompt.isEmpty()) {
      out.println();
    }
    lines.forEach(out::println);
    out.print(prompt);
    out.flush();
  }

  @Override
  public boolean typedByHand() {
    return byHand;
  }

  @Override
  public int width() {
    return 80;
  }
}
