package quarterturn.session;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** A real file on a disk that has room for so many bytes more, and then reports that it is full. */
public final class FullDisk extends FileChannel {
  private final FileChannel real;
  public int room;
  public boolean stuck;

  /**
   * @param stuck whether it can't even be cut back
   */
  public FullDisk(FileChannel real, int room, boolean stuck) {
    this.real = real;
    this.room = room;
    this.stuck = stuck;
  }

  @Override
  public int write(ByteBuffer from, long position) throws IOException {
    if (room == 0) {
      throw new IOException("No space left on device");
    }
    ByteBuffer part = from.slice(from.position(), Math.min(room, from.remaining()));
    int written = real.write(part, position);
    from.position(from.position() + written);
    room -= written;
    return written;
  }

  @Override
  public FileChannel truncate(long size) throws IOException {
    if (stuck) {
      throw new IOException("Input/output error");
    }
    real.truncate(size);
    return this;
  }

  @Override
  public void force(boolean metaData) throws IOException {
    real.force(metaData);
  }

  @Override
  public long size() throws IOException {
    return real.size();
  }

  @Override
  protected void implCloseChannel() throws IOException {
    real.close();
  }

  @Override
  public int read(ByteBuffer to) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long read(ByteBuffer[] to, int offset, int length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int read(ByteBuffer to, long position) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int write(ByteBuffer from) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long write(ByteBuffer[] from, int offset, int length) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long position() {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileChannel position(long at) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferTo(long position, long count, WritableByteChannel target) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferFrom(ReadableByteChannel source, long position, long count) {
    throw new UnsupportedOperationException();
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long position, long size) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileLock lock(long position, long size, boolean shared) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileLock tryLock(long position, long size, boolean shared) {
    throw new UnsupportedOperationException();
  }
}
