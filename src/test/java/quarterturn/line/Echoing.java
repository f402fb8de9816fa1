package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lines that a person types, who is asked again where one is refused; they are printed. */
record Echoing(PipeSource pipe) implements LineSource {
  static Echoing of(String lines, PrintWriter out) {
    return new Echoing(new PipeSource(new StringReader(lines), out, false));
  }

  @Override
  public @Nullable String readLine(String prompt, List<String> words) throws IOException {
    return pipe.readLine(prompt, words);
  }

  @Override
  public void pause(Duration time) throws StopKeyException {
    pipe.pause(time);
  }

  @Override
  public boolean typedByHand() {
    return false;
  }

  @Override
  public int width() {
    return pipe.width();
  }
}
