package quarterturn.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.session.listing.Listing;

/**
 * Looks at files again and again until one of them was saved. Looking works everywhere, on shared
 * folders too, where a system tells of no changes.
 */
final class Watch {
  private static final long PAUSE_MILLIS = 250;

  /** How many looks a file that is still being written is waited for. */
  private static final int PATIENCE = 8;

  /** Lists the files to look at, which may become more or fewer. */
  interface Listing {
    Set<Path> list() throws IOException;
  }

  /** A file as it was saved last. */
  private record Stamp(FileTime saved, long size, @Nullable Object key) {}

  private final Listing files;
  private Map<Path, Stamp> seen = Map.of();

  Watch(Listing files) {
    this.files = files;
    seen = look();
  }

  /** How many files there are now. */
  int count() {
    return seen.size();
  }

  /**
   * Waits until a file was saved, came or went.
   *
   * @return what happened, a few words for each file
   * @throws InterruptedException when the program ends
   */
  List<String> next() throws InterruptedException {
    while (true) {
      Thread.sleep(PAUSE_MILLIS);
      Map<Path, Stamp> now = look();
      for (int i = 0; i < PATIENCE && !now.equals(seen); i++) {
        Thread.sleep(PAUSE_MILLIS);
        Map<Path, Stamp> later = look();
        boolean still = later.equals(now);
        now = later;
        if (still) {
          break;
        }
      }
      List<String> changes = changes(now);
      seen = now;
      if (!changes.isEmpty()) {
        return changes;
      }
    }
  }

  private List<String> changes(Map<Path, Stamp> now) {
    List<String> changes = new ArrayList<>();
    now.forEach(
        (file, stamp) -> {
          Stamp before = seen.get(file);
          if (before == null) {
            changes.add(file + " is new");
          } else if (!before.equals(stamp)) {
            changes.add(file + " was saved");
          }
        });
    for (Path file : seen.keySet()) {
      if (!now.containsKey(file)) {
        changes.add(file + " is gone");
      }
    }
    return changes;
  }

  private Map<Path, Stamp> look() {
    Set<Path> all;
    try {
      all = files.list();
    } catch (IOException e) {
      // A folder that went while it was listed: the next look tells.
      return seen;
    }
    Map<Path, Stamp> stamps = new LinkedHashMap<>();
    for (Path file : all) {
      try {
        BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class);
        stamps.put(file, new Stamp(of.lastModifiedTime(), of.size(), of.fileKey()));
      } catch (IOException e) {
        // It is not there, or went this moment; it counts as gone until it is back.
      }
    }
    return stamps;
  }
}
