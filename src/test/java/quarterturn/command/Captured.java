package quarterturn.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;

/** A command line that was run in this process, and what it printed. */
public record Captured(int status, String out) {
  public static Captured of(Clock clock, String in, String... args) {
    InputStream oldIn = System.in;
    PrintStream oldOut = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    System.setIn(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)));
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      return new Captured(Cli.run(clock, args), bytes.toString(StandardCharsets.UTF_8));
    } finally {
      System.setIn(oldIn);
      System.setOut(oldOut);
    }
  }
}
