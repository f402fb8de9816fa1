package quarterturn.fault;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * A disk in memory, for tests and one thread at a time: what is written counts only once it is
 * forced, an entry of a folder once the folder is. A {@link Weather} says what befalls each call.
 *
 * <p>After {@link #cut} or {@link #killed}, what is left is another disk. The first one is as it
 * was, so both can be had at every moment of one play.
 */
final class MemoryDisk extends FileSystem {
  private static final long BEGAN_MS = 1_800_000_000_000L;

  private final FolderNode root;
  private Weather weather;
  private long made;
  private long ticks;

  private MemoryDisk(FolderNode root, Weather weather, long made, long ticks) {
    this.root = root;
    this.weather = weather;
    this.made = made;
    this.ticks = ticks;
  }

  /** A new disk, with a folder {@code /tmp}. */
  static MemoryDisk empty() {
    MemoryDisk disk =
        new MemoryDisk(new FolderNode(0, FileTime.fromMillis(BEGAN_MS)), Weather.FINE, 1, 0);
    disk.root.put("tmp", disk.newFolder(), disk.now());
    disk.root.force();
    return disk;
  }

  /** What is left when the power is cut now: that which was forced, and by chance some more. */
  MemoryDisk cut(long draw) {
    return left(survival(draw));
  }

  /** What is left when the program is killed now: all that it wrote. */
  MemoryDisk killed() {
    return left(null);
  }

  private MemoryDisk left(@Nullable Survival survival) {
    return new MemoryDisk(root.left(survival), Weather.FINE, made, ticks);
  }

  void weather(Weather other) {
    weather = other;
  }

  /** The top folder. */
  Path top() {
    return getPath("/");
  }

  Weather.Fate fate(Weather.Call call, @Nullable Object path, int bytes) {
    return weather.of(call, String.valueOf(path), bytes);
  }

  /** What is done by a call that may fail. */
  interface Done<T> {
    T run() throws IOException;
  }

  /** Does what a call asks, or fails. */
  <T> T call(Weather.Call call, @Nullable Object path, int bytes, Done<T> done) throws IOException {
    Weather.Fate fate = fate(call, path, bytes);
    if (fate.failure() == null) {
      return done.run();
    }
    if (fate.done()) {
      done.run();
    }
    throw new FileSystemException(String.valueOf(path), null, fate.failure());
  }

  /** What a power cut at this moment, or a force that fails, would leave. */
  Survival survival(long draw) {
    return new Survival(new SplittableRandom(draw), now());
  }

  /** The moment, which passes with each change. */
  long now() {
    return ++ticks;
  }

  FileTime time() {
    return FileTime.fromMillis(BEGAN_MS + ticks);
  }

  FileNode newFile() {
    now();
    return FileNode.made(made++, time());
  }

  FolderNode newFolder() {
    now();
    return new FolderNode(made++, time());
  }

  /** What stands at a path, or null. */
  @Nullable Node find(Path path) throws IOException {
    Node node = root;
    for (String name : ((DiskPath) path.toAbsolutePath().normalize()).names()) {
      if (!(node instanceof FolderNode folder)) {
        return null;
      }
      node = folder.entry(name);
    }
    return node;
  }

  Node node(Path path) throws IOException {
    Node node = find(path);
    if (node == null) {
      throw new NoSuchFileException(path.toString());
    }
    return node;
  }

  FolderNode parent(Path path) throws IOException {
    Path parent = path.toAbsolutePath().normalize().getParent();
    if (parent == null || !(find(parent) instanceof FolderNode folder)) {
      throw new NoSuchFileException(path.toString());
    }
    return folder;
  }

  @Override
  public DiskProvider provider() {
    return DiskProvider.ONE;
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException("a disk stays");
  }

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return false;
  }

  @Override
  public String getSeparator() {
    return "/";
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return List.of(top());
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return List.of();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return Set.of("basic");
  }

  @Override
  public Path getPath(String first, String... more) {
    return DiskPath.of(this, more.length == 0 ? first : first + "/" + String.join("/", more));
  }

  @Override
  public PathMatcher getPathMatcher(String syntax) {
    throw new UnsupportedOperationException("no patterns");
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    throw new UnsupportedOperationException("nobody is known");
  }

  @Override
  public WatchService newWatchService() {
    throw new UnsupportedOperationException("nothing is watched");
  }
}
