package quarterturn.fault;

import java.util.Arrays;

/** Bytes that grow; what was never written between others is zero. */
final class Bytes {
  private byte[] data;
  private int size;

  private Bytes(byte[] data, int size) {
    this.data = data;
    this.size = size;
  }

  static Bytes none() {
    return new Bytes(new byte[0], 0);
  }

  Bytes copy() {
    return new Bytes(Arrays.copyOf(data, size), size);
  }

  int size() {
    return size;
  }

  void write(int at, byte[] bytes, int from, int count) {
    int end = at + count;
    if (end > data.length) {
      data = Arrays.copyOf(data, Math.max(end, 2 * data.length));
    }
    System.arraycopy(bytes, from, data, at, count);
    size = Math.max(size, end);
  }

  void truncate(int length) {
    if (length < size) {
      Arrays.fill(data, length, size, (byte) 0);
      size = length;
    }
  }

  byte[] read(int at, int count) {
    return Arrays.copyOfRange(data, at, at + count);
  }
}
