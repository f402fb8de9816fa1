package quarterturn.line;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;

/** The place where the typed face reads and prints, chosen by what the program was started at. */
public record Typing(LineSource source, PrintWriter out) implements AutoCloseable {

  /** Opens the terminal that the program was started at, or fails where it can't be driven. */
  public interface Opener {
    Terminal open() throws IOException;
  }

  /**
   * A source with history and completion at a terminal; plain lines on a pipe or a "dumb" terminal.
   *
   * @param term the TERM of the environment, or null
   * @param console whether both input and output are a terminal
   * @param terminal opens it
   */
  public static Typing open(
      @Nullable String term, boolean console, Opener terminal, InputStream in, OutputStream out) {
    if (console && !"dumb".equals(term)) {
      try {
        TerminalSource source = new TerminalSource(terminal.open());
        return new Typing(source, source.out());
      } catch (IOException e) {
        return plain(true, in, out); // a terminal that can't be driven can still print
      }
    }
    return plain(console, in, out);
  }

  private static Typing plain(boolean byHand, InputStream in, OutputStream out) {
    PrintWriter writer = new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
    return new Typing(new PipeSource(reader, writer, byHand), writer);
  }

  @Override
  public void close() throws IOException {
    out.flush();
    if (source instanceof TerminalSource terminal) {
      terminal.close();
    }
  }
}
