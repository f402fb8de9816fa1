package quarterturn.fault;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.NonReadableChannelException;
import java.nio.channels.NonWritableChannelException;
import java.nio.channels.OverlappingFileLockException;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.FileSystemException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.fault.Weather.Call;

/** A channel to a file, or to a folder that is to be forced. */
final class DiskChannel extends FileChannel {
  private final MemoryDisk disk;
  private final Path path;
  private final Node node;
  private final Set<? extends OpenOption> options;
  private int position;

  DiskChannel(MemoryDisk disk, Path path, Node node, Set<? extends OpenOption> options) {
    this.disk = disk;
    this.path = path;
    this.node = node;
    this.options = options;
  }

  private FileNode file() throws IOException {
    if (!isOpen()) {
      throw new ClosedChannelException();
    }
    if (node instanceof FileNode file) {
      return file;
    }
    throw new FileSystemException(path.toString(), null, "Is a directory");
  }

  private FileNode written() throws IOException {
    FileNode file = file();
    if (!options.contains(StandardOpenOption.WRITE)
        && !options.contains(StandardOpenOption.APPEND)) {
      throw new NonWritableChannelException();
    }
    return file;
  }

  @Override
  public int read(ByteBuffer to, long at) throws IOException {
    FileNode file = file();
    if (options.contains(StandardOpenOption.WRITE) && !options.contains(StandardOpenOption.READ)) {
      throw new NonReadableChannelException();
    }
    return disk.call(
        Call.READ,
        path,
        0,
        () -> {
          byte[] bytes = file.read((int) at, to.remaining());
          to.put(bytes);
          return bytes.length == 0 && to.hasRemaining() ? -1 : bytes.length;
        });
  }

  @Override
  public int read(ByteBuffer to) throws IOException {
    int read = read(to, position);
    position += Math.max(0, read);
    return read;
  }

  @Override
  public long read(ByteBuffer[] to, int from, int count) throws IOException {
    return read(to[from]);
  }

  @Override
  public int write(ByteBuffer bytes, long at) throws IOException {
    FileNode file = written();
    Weather.Fate fate = disk.fate(Call.WRITE, path, bytes.remaining());
    int taken = fate.done() ? Math.min(bytes.remaining(), fate.bytes()) : 0;
    if (taken > 0) {
      byte[] all = new byte[taken];
      bytes.get(all);
      file.write((int) at, all, taken, disk.now());
      file.touch(disk.time());
    }
    if (fate.failure() != null) {
      throw new IOException(fate.failure());
    }
    return taken;
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    if (options.contains(StandardOpenOption.APPEND)) {
      position = (int) written().size();
    }
    int taken = write(bytes, position);
    position += taken;
    return taken;
  }

  @Override
  public long write(ByteBuffer[] bytes, int from, int count) throws IOException {
    return write(bytes[from]);
  }

  @Override
  public long position() {
    return position;
  }

  @Override
  public FileChannel position(long at) {
    position = (int) at;
    return this;
  }

  @Override
  public long size() throws IOException {
    FileNode file = file();
    return disk.call(Call.SIZE, path, 0, file::size);
  }

  @Override
  public FileChannel truncate(long length) throws IOException {
    FileNode file = written();
    return disk.call(
        Call.TRUNCATE,
        path,
        0,
        () -> {
          file.truncate((int) length, disk.now());
          position = Math.min(position, (int) length);
          file.touch(disk.time());
          return this;
        });
  }

  @Override
  public void force(boolean all) throws IOException {
    if (!isOpen()) {
      throw new ClosedChannelException();
    }
    Weather.Fate fate = disk.fate(Call.FORCE, path, 0);
    if (node instanceof FileNode file && !fate.done()) {
      file.forceFails(disk.survival(disk.now()));
    } else if (node instanceof FileNode file) {
      file.force();
    } else if (node instanceof FolderNode folder && fate.done()) {
      folder.force();
    }
    if (fate.failure() != null) {
      throw new IOException(fate.failure());
    }
  }

  @Override
  public long transferTo(long at, long count, WritableByteChannel to) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(count, 1 << 13));
    read(bytes, at);
    return to.write(bytes.flip());
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long at, long count) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(count, 1 << 13));
    from.read(bytes);
    return write(bytes.flip(), at);
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long at, long size) {
    throw new UnsupportedOperationException("no maps");
  }

  @Override
  public FileLock lock(long at, long size, boolean shared) throws IOException {
    FileLock lock = tryLock(at, size, shared);
    if (lock == null) {
      throw new IOException("it is locked, and nobody would let go");
    }
    return lock;
  }

  @Override
  public @Nullable FileLock tryLock(long at, long size, boolean shared) throws IOException {
    FileNode file = written();
    return disk.call(
        Call.LOCK,
        path,
        0,
        () -> {
          if (!file.lock(this)) {
            throw new OverlappingFileLockException();
          }
          return new Held(at, size, shared);
        });
  }

  private final class Held extends FileLock {
    Held(long at, long size, boolean shared) {
      super(DiskChannel.this, at, size, shared);
    }

    @Override
    public boolean isValid() {
      return DiskChannel.this.isOpen();
    }

    @Override
    public void release() {
      unlock();
    }
  }

  private void unlock() {
    if (node instanceof FileNode file) {
      file.unlock(this);
    }
  }

  @Override
  protected void implCloseChannel() throws IOException {
    unlock();
    disk.call(Call.CLOSE, path, 0, () -> true);
  }
}
