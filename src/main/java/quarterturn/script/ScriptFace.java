package quarterturn.script;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Bench;
import quarterturn.session.ExitStatus;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;
import quarterturn.unit.TypedLines;

/**
 * The session as JSON lines: one object out for each prompt, one object in for each answer, and
 * nothing else. UTF-8 both ways. After an {@code error} line the same prompt follows again.
 */
public final class ScriptFace {
  /** Most characters of an answer. */
  public static final int LONGEST = 64 * 1024;

  private final TypedLines in;
  private final PrintStream out;

  private ScriptFace(InputStream in, PrintStream out) {
    this.in = new TypedLines(new InputStreamReader(in, StandardCharsets.UTF_8), LONGEST);
    this.out = out;
  }

  /** Plays {@code bench} until it ends or the script does, and returns the exit status. */
  public static int run(Bench bench, InputStream in, PrintStream out) {
    ScriptFace face = new ScriptFace(in, out);
    try {
      return face.play(bench);
    } catch (IOException e) {
      face.error("could not go on: " + e.getMessage());
      return ExitStatus.FAILED;
    }
  }

  private int play(Bench bench) throws IOException {
    while (true) {
      Prompt prompt = bench.prompt();
      print(PromptJson.of(prompt));
      if (prompt.ended()) {
        return prompt instanceof Prompt.HandOver ? ExitStatus.HAND_OVER : ExitStatus.DONE;
      }
      if (out.checkError()) {
        // Nobody reads the prompts any more, so what still comes in answers nothing.
        bench.leave();
        return ExitStatus.FAILED;
      }
      TypedLines.Line line = in.next();
      if (line == null || !answered(bench, prompt, line)) {
        print(JsonNodeFactory.instance.objectNode().put("left", Printable.of(bench.leave())));
        return ExitStatus.DONE;
      }
    }
  }

  /** Gives the line's answer to the bench; false where the script leaves. */
  private boolean answered(Bench bench, Prompt prompt, TypedLines.Line line) throws IOException {
    String wrong = null;
    Instant before = bench.now();
    try {
      if (line.cut()) {
        throw new BadAnswer("a line is at most " + LONGEST + " characters long");
      }
      ScriptReply reply = ReplyReader.read(line.text(), prompt);
      if (reply.at() != null) {
        bench.setClock(reply.at());
      }
      if (reply.answer() == null) {
        return false;
      }
      bench.answer(reply.answer());
    } catch (BadAnswer | NotUnderstood e) {
      wrong = e.getMessage();
    } catch (Refused e) {
      wrong = e.getMessage();
      setBack(bench, before);
    }
    if (wrong != null) {
      error(wrong + "; " + Takes.of(prompt));
    }
    return true;
  }

  /** What was not taken as an answer does not set the clock either. */
  private static void setBack(Bench bench, Instant before) {
    try {
      bench.setClock(before);
    } catch (Refused e) {
      throw new IllegalStateException("the time it was is no time to go back to", e);
    }
  }

  private void error(@Nullable String message) {
    print(
        JsonNodeFactory.instance.objectNode().put("error", Printable.of(String.valueOf(message))));
  }

  private void print(ObjectNode json) {
    byte[] line = (json + "\n").getBytes(StandardCharsets.UTF_8);
    out.write(line, 0, line.length);
    out.flush();
  }
}
