package quarterturn.script;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import quarterturn.line.ScriptedBench;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;

/** A bench played by a script, and what came out. */
record ScriptPlay(int status, List<String> printed) {
  static ScriptPlay of(Bench bench, String... lines) {
    return of(bench, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
  }

  static ScriptPlay of(Bench bench, byte[] typed) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int status =
        new ScriptFace(
                new ByteArrayInputStream(typed), new PrintStream(out, true, StandardCharsets.UTF_8))
            .run(bench);
    return new ScriptPlay(status, out.toString(StandardCharsets.UTF_8).lines().toList());
  }

  /** One prompt and an end after it. */
  static ScriptedBench bench(Prompt prompt) {
    return new ScriptedBench(prompt, quarterturn.line.Invented.done());
  }
}
