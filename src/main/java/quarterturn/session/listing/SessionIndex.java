package quarterturn.session.listing;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the sessions' folder, with what was read of it the last time. Only files that have
 * changed since, by length, time or identity, are read again.
 *
 * <p>What was read is kept in a file beside the sessions. It says nothing that the sessions don't
 * say: where it is missing or wrong all of them are read, and it is written anew. Where it can't be
 * written nothing is lost but time.
 */
public final class SessionIndex {
  private static final String FILE = ".index";
  private static final String FORMAT = "quarterturn index 3";

  /** How many changed files are read anew each time rather than that the index is written. */
  static final int FEW = 8;

  /** The most entries of an index that is written at every change. */
  private static final int SMALL = 500;

  private final Path folder;
  private @Nullable List<IndexEntry> known;

  public SessionIndex(Path folder) {
    this.folder = folder;
  }

  /**
   * Everything in the folder that is not of the program's own making beside the sessions, by name;
   * the same list again where nothing has changed.
   */
  public List<IndexEntry> entries() throws IOException {
    List<IndexEntry> was = known;
    // What was read before is read while the files are looked at.
    CompletableFuture<List<IndexEntry>> kept =
        was == null && Files.isRegularFile(folder.resolve(FILE))
            ? CompletableFuture.supplyAsync(() -> IndexText.read(derived(FILE)))
            : CompletableFuture.completedFuture(was == null ? List.of() : was);
    Map<String, Optional<IndexStamp>> stamps = stamps();
    List<IndexEntry> before = kept.join();
    List<IndexEntry> now = new ArrayList<>(stamps.size());
    for (IndexEntry entry : before) {
      Optional<IndexStamp> stamp = stamps.get(entry.file());
      if (stamp != null && stamp.isPresent() && stamp.get().same(entry.stamp())) {
        now.add(entry);
        stamps.remove(entry.file());
      }
    }
    int changes = stamps.size() + before.size() - now.size();
    if (was != null && changes == 0) {
      return was;
    }
    stamps.forEach(
        (file, stamp) -> now.add(IndexEntry.read(folder.resolve(file), stamp.orElse(null))));
    if (!stamps.isEmpty()) {
      now.sort(Comparator.comparing(IndexEntry::file));
    }
    known = List.copyOf(now);
    if (changes > FEW || (changes > 0 && known.size() <= SMALL)) {
      derived(FILE).write(IndexText.of(known));
    }
    return known;
  }

  private Map<String, Optional<IndexStamp>> stamps() throws IOException {
    Map<String, Optional<IndexStamp>> stamps = new HashMap<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
        for (Path path : all) {
          String name = String.valueOf(path.getFileName());
          if (!ours(name)) {
            stamps.put(name, stamp(path));
          }
        }
      }
    }
    return stamps;
  }

  /** Whether a file is of the program's own making beside the sessions. */
  private static boolean ours(String name) {
    return name.endsWith(".lock") || name.startsWith(FILE);
  }

  private static Optional<IndexStamp> stamp(Path path) {
    try {
      return Optional.of(IndexStamp.of(path));
    } catch (IOException e) {
      return Optional.empty(); // it went this moment, or is a link to nowhere
    }
  }

  /**
   * What was read and turned in an instrument's sessions, by their names.
   *
   * @param glances these sessions
   */
  public Map<String, SessionReadings> readings(
      String instrument, List<IndexEntry> entries, List<Glance> glances) throws IOException {
    return ReadingsFile.of(folder, derived(FILE + "-" + instrument), entries, glances);
  }

  private DerivedFile derived(String name) {
    return new DerivedFile(folder.resolve(name), FORMAT);
  }
}
