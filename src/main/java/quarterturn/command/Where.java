package quarterturn.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/** The options that name the folders of sessions and instruments, and of a user's own files. */
final class Where {
  /** The place of these options in an unsorted help: behind a command's own. */
  static final int ORDER = 1;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      order = ORDER,
      description = "Folder for sessions and instruments, in place of the platform's own.")
  private @Nullable Path data;

  @Option(
      names = "--own",
      paramLabel = "DIR",
      order = ORDER,
      description = "Folder with your own procedures/ and safety/ files, which come first.")
  private @Nullable Path own;

  Sessions sessions(Clock clock) {
    if (own != null && !Files.isDirectory(own)) {
      throw new NotUnderstoodException("--own: there is no folder " + own);
    }
    return new Sessions(store(), own, clock);
  }

  Store store() {
    if (data != null) {
      return Store.at(data);
    }
    String os = System.getProperty("os.name", "");
    return Store.at(
        Store.platformDefault(System.getenv(), os, System.getProperty("user.home", "")));
  }
}
