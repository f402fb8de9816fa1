package quarterturn.fault;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.FileTime;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.fault.Weather.Call;

/** What {@code java.nio.file.Files} asks of a disk in memory. */
final class DiskProvider extends FileSystemProvider {
  static final String SCHEME = "memory";
  static final DiskProvider ONE = new DiskProvider();

  private DiskProvider() {}

  private static MemoryDisk disk(Path path) {
    return ((DiskPath) path).getFileSystem();
  }

  private static String name(Path path) {
    return String.valueOf(path.toAbsolutePath().normalize().getFileName());
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    MemoryDisk disk = disk(path);
    boolean anew = options.contains(StandardOpenOption.CREATE_NEW);
    boolean makes = anew || options.contains(StandardOpenOption.CREATE);
    boolean missing = disk.find(path) == null;
    return disk.call(
        Call.OPEN,
        path,
        makes && missing ? 1 : 0,
        () -> {
          if (anew && !missing) {
            throw new FileAlreadyExistsException(path.toString());
          }
          if (makes && missing) {
            FileNode file = disk.newFile();
            disk.parent(path).put(name(path), file, disk.now());
          }
          Node node = disk.node(path);
          boolean writes =
              options.contains(StandardOpenOption.WRITE)
                  || options.contains(StandardOpenOption.APPEND);
          if (writes && node instanceof FolderNode) {
            throw new FileSystemException(path.toString(), null, "Is a directory");
          }
          if (writes
              && options.contains(StandardOpenOption.TRUNCATE_EXISTING)
              && node instanceof FileNode file) {
            file.truncate(0, disk.now());
          }
          return new DiskChannel(disk, path, node, Set.copyOf(options));
        });
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return newFileChannel(path, options, attributes);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path path, DirectoryStream.Filter<? super Path> filter) throws IOException {
    MemoryDisk disk = disk(path);
    List<Path> found =
        disk.call(
            Call.LIST,
            path,
            0,
            () -> {
              if (!(disk.node(path) instanceof FolderNode folder)) {
                throw new NotDirectoryException(path.toString());
              }
              List<Path> out = new ArrayList<>();
              for (String name : folder.names()) {
                Path one = path.resolve(name);
                if (filter.accept(one)) {
                  out.add(one);
                }
              }
              return out;
            });
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        return found.iterator();
      }

      @Override
      public void close() {
        // Nothing is held.
      }
    };
  }

  @Override
  public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
    MemoryDisk disk = disk(path);
    disk.call(
        Call.MAKE,
        path,
        1,
        () -> {
          if (disk.find(path) != null) {
            throw new FileAlreadyExistsException(path.toString());
          }
          disk.parent(path).put(name(path), disk.newFolder(), disk.now());
          return true;
        });
  }

  @Override
  public void delete(Path path) throws IOException {
    MemoryDisk disk = disk(path);
    disk.call(
        Call.DELETE,
        path,
        0,
        () -> {
          if (disk.node(path) instanceof FolderNode folder && !folder.names().isEmpty()) {
            throw new DirectoryNotEmptyException(path.toString());
          }
          disk.parent(path).remove(name(path), disk.now());
          return true;
        });
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    throw new UnsupportedOperationException("open, read and write, so that each can fail");
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    MemoryDisk disk = disk(from);
    Set<CopyOption> how = Set.of(options);
    disk.call(
        Call.MOVE,
        to,
        0,
        () -> {
          Node node = disk.node(from);
          boolean over =
              how.contains(StandardCopyOption.ATOMIC_MOVE)
                  || how.contains(StandardCopyOption.REPLACE_EXISTING);
          Node there = disk.find(to);
          if (there == node) {
            return true;
          } else if (there != null && !over) {
            throw new FileAlreadyExistsException(to.toString());
          } else if (there instanceof FolderNode) {
            throw new FileSystemException(to.toString(), null, "Is a directory");
          }
          FolderNode source = disk.parent(from);
          FolderNode target = disk.parent(to);
          if (source == target) {
            source.rename(name(from), name(to), node, disk.now());
          } else {
            target.put(name(to), node, disk.now());
            source.remove(name(from), disk.now());
          }
          return true;
        });
  }

  @Override
  public boolean isSameFile(Path one, Path other) throws IOException {
    return disk(one).node(one) == disk(other).node(other);
  }

  @Override
  public boolean isHidden(Path path) {
    return name(path).startsWith(".");
  }

  @Override
  public FileStore getFileStore(Path path) {
    throw new UnsupportedOperationException("no stores");
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    MemoryDisk disk = disk(path);
    disk.call(Call.LOOK, path, 0, () -> disk.node(path));
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    MemoryDisk disk = disk(path);
    return type.cast(disk.call(Call.LOOK, path, 0, () -> disk.node(path).seen()));
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
      throws IOException {
    BasicFileAttributes found = readAttributes(path, BasicFileAttributes.class, options);
    return Map.of(
        "size", found.size(),
        "lastModifiedTime", found.lastModifiedTime(),
        "isDirectory", found.isDirectory());
  }

  @Override
  public <V extends FileAttributeView> @Nullable V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return type == BasicFileAttributeView.class ? type.cast(new View(path)) : null;
  }

  private record View(Path path) implements BasicFileAttributeView {
    @Override
    public String name() {
      return "basic";
    }

    @Override
    public BasicFileAttributes readAttributes() throws IOException {
      return ONE.readAttributes(path, BasicFileAttributes.class);
    }

    @Override
    public void setTimes(
        @Nullable FileTime modified, @Nullable FileTime access, @Nullable FileTime created)
        throws IOException {
      MemoryDisk disk = disk(path);
      disk.call(
          Call.SET,
          path,
          0,
          () -> {
            if (modified != null) {
              disk.node(path).touch(modified);
            }
            return true;
          });
    }
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options) {
    throw new UnsupportedOperationException("no such attribute");
  }

  @Override
  public String getScheme() {
    return SCHEME;
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> env) {
    throw new UnsupportedOperationException("make a disk");
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    throw new UnsupportedOperationException("disks have no names");
  }

  @Override
  public Path getPath(URI uri) {
    throw new UnsupportedOperationException("disks have no names");
  }
}
