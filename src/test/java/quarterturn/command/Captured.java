package quarterturn.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import quarterturn.session.store.UserFolders;

/** A command line that was run in this process, and what it printed. Several run at a time. */
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
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams.take(in, out, err);
    try {
      int status = Cli.run(clock, folders, args);
      return new Captured(
          status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    } finally {
      Streams.giveBack();
    }
  }
}
