package quarterturn.session.journal;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes one lock again and again in several threads, and counts how often somebody else had it too.
 * Who has it is noted in memory that all processes share. Also a second process.
 */
final class LockTaker {
  /** Bytes of the shared memory: who holds the lock, and how often two did. */
  private static final int SHARED = 2 * Integer.BYTES;

  private static final VarHandle AT =
      MethodHandles.byteBufferViewVarHandle(int[].class, ByteOrder.nativeOrder());

  private final Path file;
  private final MappedByteBuffer shared;

  LockTaker(Path file) throws IOException {
    this.file = file;
    try (FileChannel channel =
        FileChannel.open(
            file.resolveSibling("shared"),
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE)) {
      this.shared = channel.map(FileChannel.MapMode.READ_WRITE, 0, SHARED);
    }
  }

  /** How often two held the lock at once, in all processes so far. */
  int twice() {
    return (int) AT.getVolatile(shared, Integer.BYTES);
  }

  /** Takes the lock {@code times} in each of {@code threads}. */
  void take(int threads, int times) throws InterruptedException {
    List<Thread> all = new ArrayList<>();
    for (int i = 0; i < threads; i++) {
      Thread thread = new Thread(() -> take(times));
      thread.start();
      all.add(thread);
    }
    for (Thread thread : all) {
      thread.join();
    }
  }

  private void take(int times) {
    int done = 0;
    while (done < times) {
      try (JournalLock lock = JournalLock.take(file)) {
        int before = (int) AT.getAndAdd(shared, 0, 1);
        Thread.onSpinWait();
        int after = (int) AT.getAndAdd(shared, 0, -1);
        if (before != 0 || after != 1) {
          AT.getAndAdd(shared, Integer.BYTES, 1);
        }
        done++;
      } catch (Journal.InUse e) {
        Thread.yield();
      } catch (IOException e) {
        AT.getAndAdd(shared, Integer.BYTES, 1);
        throw new IllegalStateException("the lock could not be taken", e);
      }
    }
  }

  /**
   * Takes the lock of a file often; or with the word "hold" once: says how that went, and keeps it.
   *
   * @param args file, threads and times; or file and "hold"
   */
  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[0]);
    if (args[1].equals("hold")) {
      try (JournalLock lock = JournalLock.take(file)) {
        System.out.println("held");
        System.in.read();
      } catch (Journal.InUse e) {
        System.out.println("in use");
      }
      return;
    }
    new LockTaker(file).take(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
  }
}
