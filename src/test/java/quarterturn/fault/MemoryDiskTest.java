package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterturn.fault.Weather.Call;

/** A disk in memory is a disk to programs, and keeps after a power cut what one would. */
class MemoryDiskTest {
  private static final int DRAWS = 200;

  private final MemoryDisk disk = MemoryDisk.empty();
  private final Path folder = disk.top().resolve("tmp");
  private final Path file = folder.resolve("one.txt");

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void force(Path path) throws IOException {
    try (FileChannel channel = FileChannel.open(path)) {
      channel.force(true);
    }
  }

  /** What a file can hold after a power cut; "-" where it can be missing. */
  private Set<String> left(Path path) throws IOException {
    Set<String> out = new TreeSet<>();
    for (int draw = 0; draw < DRAWS; draw++) {
      Path there = disk.cut(draw).getPath(path.toString());
      out.add(Files.exists(there) ? Files.readString(there).replace('\0', '0') : "-");
    }
    return out;
  }

  @Test
  void whatIsForcedIsThereAndWhatIsNotMayBe() throws Exception {
    Files.writeString(file, "sure");
    assertThat(left(file)).containsExactly("-", "", "sure");
    force(file);
    assertThat(left(file)).containsExactly("-", "sure");
    force(folder);
    assertThat(left(file)).containsExactly("sure");
    Files.write(file, bytes(", more"), StandardOpenOption.APPEND);
    assertThat(left(file)).containsExactly("sure", "sure, more");
    Files.delete(file);
    assertThat(left(file)).containsExactly("-", "sure", "sure, more");
  }

  @Test
  void aMoveIsWholeOrNot() throws Exception {
    Path other = file.resolveSibling("two.txt");
    Files.writeString(file, "old");
    Files.writeString(other, "new");
    force(file);
    force(other);
    force(folder);
    Files.move(other, file, StandardCopyOption.ATOMIC_MOVE);
    assertThat(Files.readString(file)).isEqualTo("new");
    assertThat(left(file)).containsExactly("old", "new");
    assertThat(left(other)).containsExactly("-", "new");
  }

  @Test
  void sectorsComeInAnyOrderAndEachIsWhole() throws Exception {
    String a = "a".repeat(512);
    Files.writeString(file, "");
    force(folder);
    Files.writeString(file, a + "b");
    assertThat(left(file)).containsExactly("", a, a + "b", "0".repeat(512) + "b");
  }

  @Test
  void aForceThatFailedIsNotMadeGoodByTheNext() throws Exception {
    Files.writeString(file, "");
    force(folder);
    Files.writeString(file, "gone");
    disk.weather((call, path, n) -> call == Call.FORCE ? Weather.Fate.FAILS : Weather.Fate.FINE);
    assertThrows(IOException.class, () -> force(file));
    disk.weather(Weather.FINE);
    force(file);
    assertThat(Files.readString(file)).isEqualTo("gone");
    assertThat(left(file).size()).isEqualTo(1);
  }

  @Test
  void aKilledProgramLosesNothingThatItWrote() throws Exception {
    Files.writeString(file, "written");
    assertThat(Files.readString(disk.killed().getPath(file.toString()))).isEqualTo("written");
  }

  @Test
  void itIsADiskToPrograms() throws Exception {
    Path deep = disk.top().resolve("a/b");
    Files.createDirectories(deep);
    Path one = deep.resolve("one");
    try (FileChannel channel =
        FileChannel.open(
            one,
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(bytes("0123456789")), 2);
      channel.truncate(8);
      assertThat(channel.size()).isEqualTo(8);
      ByteBuffer in = ByteBuffer.allocate(4);
      channel.read(in, 2);
      assertThat(new String(in.array(), StandardCharsets.UTF_8)).isEqualTo("0123");
    }
    assertThrows(
        FileAlreadyExistsException.class,
        () -> Files.write(one, bytes(""), StandardOpenOption.CREATE_NEW));
    assertThrows(NoSuchFileException.class, () -> Files.delete(deep.resolve("two")));
    assertThrows(FileSystemException.class, () -> Files.delete(deep));
    assertThrows(FileSystemException.class, () -> Files.write(deep, bytes("")));
    try (Stream<Path> all = Files.walk(disk.top().resolve("a"))) {
      assertThat(all.map(Path::toString)).containsExactly("/a", "/a/b", "/a/b/one").inOrder();
    }
    Path moved = Files.move(one, deep.resolveSibling("moved"));
    assertThat(Files.size(moved)).isEqualTo(8);
    assertThat(deep.relativize(moved)).isEqualTo(disk.getPath("../moved"));
    assertThat(deep.resolve("../moved").normalize()).isEqualTo(moved);
  }

  @Test
  void aDiskThatIsFullTakesAPartAndThenNothing() throws Exception {
    int[] calls = {0};
    SplittableRandom random = new SplittableRandom(1);
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      disk.weather((call, path, n) -> Fault.FULL.fate(call, calls[0]++, n, random));
      ByteBuffer text = ByteBuffer.wrap(new byte[1000]);
      IOException e = assertThrows(IOException.class, () -> channel.write(text));
      assertThat(e).hasMessageThat().contains("No space left");
      long size = channel.size();
      assertThat(size).isLessThan(1000L);
      assertThrows(IOException.class, () -> channel.write(ByteBuffer.wrap(new byte[1])));
      assertThat(channel.size()).isEqualTo(size);
    }
  }
}
