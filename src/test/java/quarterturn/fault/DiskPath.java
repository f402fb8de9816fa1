package quarterturn.fault;

import java.net.URI;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A path on a disk in memory, with strokes between its names. */
final class DiskPath implements Path {
  private final MemoryDisk disk;
  private final boolean absolute;
  private final List<String> names;

  DiskPath(MemoryDisk disk, boolean absolute, List<String> names) {
    this.disk = disk;
    this.absolute = absolute;
    this.names = List.copyOf(names);
  }

  static DiskPath of(MemoryDisk disk, String text) {
    List<String> names = List.of(text.split("/")).stream().filter(n -> !n.isEmpty()).toList();
    return new DiskPath(disk, text.startsWith("/"), names);
  }

  List<String> names() {
    return names;
  }

  private DiskPath with(boolean whole, List<String> others) {
    return new DiskPath(disk, whole, others);
  }

  private static DiskPath own(Path other) {
    return (DiskPath) other;
  }

  @Override
  public MemoryDisk getFileSystem() {
    return disk;
  }

  @Override
  public boolean isAbsolute() {
    return absolute;
  }

  @Override
  public @Nullable Path getRoot() {
    return absolute ? with(true, List.of()) : null;
  }

  @Override
  public @Nullable Path getFileName() {
    return names.isEmpty() ? null : getName(names.size() - 1);
  }

  @Override
  public @Nullable Path getParent() {
    boolean none = names.size() < (absolute ? 1 : 2);
    return none ? null : with(absolute, names.subList(0, names.size() - 1));
  }

  @Override
  public int getNameCount() {
    return names.size();
  }

  @Override
  public Path getName(int index) {
    return subpath(index, index + 1);
  }

  @Override
  public Path subpath(int from, int to) {
    return with(false, names.subList(from, to));
  }

  @Override
  public boolean startsWith(Path other) {
    List<String> first = own(other).names;
    return absolute == other.isAbsolute()
        && first.size() <= names.size()
        && names.subList(0, first.size()).equals(first);
  }

  @Override
  public boolean endsWith(Path other) {
    List<String> last = own(other).names;
    return last.size() <= names.size()
        && names.subList(names.size() - last.size(), names.size()).equals(last)
        && (!other.isAbsolute() || equals(other));
  }

  @Override
  public Path normalize() {
    List<String> out = new ArrayList<>();
    for (String name : names) {
      boolean up = name.equals("..") && !out.isEmpty() && !out.get(out.size() - 1).equals("..");
      if (up) {
        out.remove(out.size() - 1);
      } else if (!name.equals(".") && !(name.equals("..") && absolute)) {
        out.add(name);
      }
    }
    return with(absolute, out);
  }

  @Override
  public Path resolve(Path other) {
    if (other.isAbsolute()) {
      return other;
    }
    List<String> all = new ArrayList<>(names);
    all.addAll(own(other).names);
    return with(absolute, all);
  }

  @Override
  public Path relativize(Path other) {
    List<String> there = own(other).names;
    int same = 0;
    while (same < Math.min(names.size(), there.size()) && names.get(same).equals(there.get(same))) {
      same++;
    }
    List<String> out = new ArrayList<>();
    for (int i = same; i < names.size(); i++) {
      out.add("..");
    }
    out.addAll(there.subList(same, there.size()));
    return with(false, out);
  }

  @Override
  public URI toUri() {
    return URI.create(DiskProvider.SCHEME + "://" + toAbsolutePath());
  }

  @Override
  public DiskPath toAbsolutePath() {
    return with(true, names);
  }

  @Override
  public Path toRealPath(LinkOption... options) {
    return toAbsolutePath().normalize();
  }

  @Override
  public WatchKey register(
      WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
    throw new UnsupportedOperationException("nothing is watched");
  }

  @Override
  public int compareTo(Path other) {
    return toString().compareTo(other.toString());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DiskPath path
        && path.disk == disk
        && path.absolute == absolute
        && path.names.equals(names);
  }

  @Override
  public int hashCode() {
    return names.hashCode();
  }

  @Override
  public String toString() {
    return (absolute ? "/" : "") + String.join("/", names);
  }
}
