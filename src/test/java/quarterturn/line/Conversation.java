package quarterturn.line;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Dates;

/** A bench played by typed lines, and what was printed, typed lines included. */
record Conversation(int status, List<String> printed) {
  static Conversation of(ScriptedBench bench, List<String> typed, boolean byHand) {
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    String input = typed.isEmpty() ? "" : String.join("\n", typed) + "\n";
    LineSource source = new Skipping(bench, new StringReader(input), writer, byHand);
    int status = LineFace.run(bench, source, writer, new Dates(ZoneOffset.UTC));
    return new Conversation(status, out.toString().lines().toList());
  }

  static Conversation of(ScriptedBench bench, String... typed) {
    return of(bench, List.of(typed), false);
  }

  /** Whether a printed line begins like this. */
  boolean says(String beginning) {
    return printed.stream().anyMatch(line -> line.startsWith(beginning));
  }

  /** A pipe whose pauses move the bench's clock, so that no test waits; it echoes what is typed. */
  private static final class Skipping implements LineSource {
    private final ScriptedBench bench;
    private final PipeSource pipe;
    private final boolean byHand;

    Skipping(ScriptedBench bench, StringReader in, PrintWriter out, boolean byHand) {
      this.bench = bench;
      this.pipe = new PipeSource(in, out, false);
      this.byHand = byHand;
    }

    @Override
    public @Nullable String readLine(String prompt, List<String> words) throws java.io.IOException {
      return pipe.readLine(prompt, words);
    }

    @Override
    public void pause(Duration time) {
      bench.pass(time);
    }

    @Override
    public boolean typedByHand() {
      return byHand;
    }

    @Override
    public int width() {
      return pipe.width();
    }
  }
}
