package quarterturn.fault;

import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A file's contents, those that are on disk, and the changes in between. */
final class FileNode extends Node {
  /** A piece of a write that reaches the disk whole or not. */
  private static final int SECTOR = 512;

  private final Bytes live;
  private final Bytes onDisk;
  private final List<Change> unforced = new ArrayList<>();
  private @Nullable DiskChannel locker;

  private FileNode(long id, FileTime created, Bytes live, Bytes onDisk) {
    super(id, created);
    this.live = live;
    this.onDisk = onDisk;
  }

  static FileNode made(long id, FileTime created) {
    return new FileNode(id, created, Bytes.none(), Bytes.none());
  }

  /**
   * Bytes written at a place, or without bytes the length that a file was cut to.
   *
   * @param when the moment of it
   */
  private record Change(int at, byte @Nullable [] bytes, long when) {}

  @Override
  long size() {
    return live.size();
  }

  byte[] read(int at, int count) {
    return live.read(at, Math.max(0, Math.min(count, live.size() - at)));
  }

  void write(int at, byte[] bytes, int count, long when) {
    live.write(at, bytes, 0, count);
    int done = 0;
    while (done < count) {
      int piece = Math.min(count - done, SECTOR - (at + done) % SECTOR);
      unforced.add(new Change(at + done, Arrays.copyOfRange(bytes, done, done + piece), when));
      done += piece;
    }
  }

  void truncate(int length, long when) {
    if (length < live.size()) {
      live.truncate(length);
      unforced.add(new Change(length, null, when));
    }
  }

  void force() {
    unforced.forEach(change -> apply(change, onDisk));
    unforced.clear();
  }

  /**
   * A force that failed: what the disk did not take is never tried again, though programs go on
   * seeing it, as systems have it.
   */
  void forceFails(Survival survival) {
    kept(survival).forEach(change -> apply(change, onDisk));
    unforced.clear();
  }

  /** The changes that reach the disk: of a sector, all up to some moment or none. */
  private List<Change> kept(Survival survival) {
    Map<Integer, Long> until = new HashMap<>();
    Set<Change> kept = new HashSet<>();
    for (Change change : unforced) {
      if (survival.keeps(change.when)) {
        kept.add(change);
        until.put(change.at / SECTOR, change.when);
      }
    }
    return unforced.stream()
        .filter(
            change ->
                change.bytes == null
                    ? kept.contains(change)
                    : change.when <= until.getOrDefault(change.at / SECTOR, -1L))
        .toList();
  }

  private static void apply(Change change, Bytes to) {
    if (change.bytes == null) {
      to.truncate(change.at);
    } else {
      to.write(change.at, change.bytes, 0, change.bytes.length);
    }
  }

  @Override
  FileNode left(@Nullable Survival survival) {
    Bytes bytes = survival == null ? live.copy() : onDisk.copy();
    if (survival != null) {
      kept(survival).forEach(change -> apply(change, bytes));
    }
    return dated(new FileNode(id(), created(), bytes, bytes.copy()));
  }

  /** Locks the file for a channel unless it is locked. */
  boolean lock(DiskChannel channel) {
    if (locker != null) {
      return false;
    }
    locker = channel;
    return true;
  }

  void unlock(DiskChannel channel) {
    if (locker == channel) {
      locker = null;
    }
  }
}
