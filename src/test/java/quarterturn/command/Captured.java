package quarterturn.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import quarterturn.platform.UserFolders;

/** A command line that was run in this process, and what it printed. */
public record Captured(int status, String out, String err) {
  /** Arguments with the folder of the data behind them. */
  static String[] at(Path data, String... args) {
    return Stream.concat(Stream.of(args), Stream.of("--data", data.toString()))
        .toArray(String[]::new);
  }

  public static Captured of(Clock clock, String in, String... args) {
    return of(clock, new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), args);
  }

  static Captured of(Clock clock, InputStream in, String... args) {
    return of(clock, UserFolders.ofThisUser(), in, args);
  }

  static Captured of(Clock clock, UserFolders folders, InputStream in, String... args) {
    return of(clock, folders, in, new ByteArrayOutputStream(), args);
  }

  /**
   * A command line whose standard output is given. One at a time, since there is one standard
   * input.
   *
   * @param to what it was can be seen where it is kept in bytes
   */
  static synchronized Captured of(
      Clock clock, UserFolders folders, InputStream in, OutputStream to, String... args) {
    InputStream oldIn = System.in;
    PrintStream oldErr = System.err;
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    System.setIn(in);
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    try {
      int status = Launch.run(clock, folders, to, args);
      return new Captured(
          status,
          to instanceof ByteArrayOutputStream out ? out.toString(StandardCharsets.UTF_8) : "",
          err.toString(StandardCharsets.UTF_8));
    } finally {
      System.setIn(oldIn);
      System.setErr(oldErr);
    }
  }
}
