package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.platform.FileIdentity;
import quarterturn.session.Event;
import quarterturn.session.FullDisk;
import quarterturn.session.store.Samples;

class JournalTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("demo.jsonl");
  }

  @Test
  void whatIsAppendedIsReadBack() throws IOException {
    List<Event> events = Samples.everyKind();
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      journal.append(events.subList(0, 1));
      journal.append(events.subList(1, 5));
      assertThat(Journal.read(file()).events()).isEqualTo(events.subList(0, 5));
    }
    try (Journal journal = Journal.open(file())) {
      assertThat(journal.found().events()).isEqualTo(events.subList(0, 5));
      journal.append(events.subList(5, events.size()));
    }
    assertThat(Journal.read(file()))
        .isEqualTo(new Journal.Contents(Samples.HEADER, events, null, 0));
  }

  @Test
  void theFileIsOneJsonObjectALine() throws IOException {
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      journal.append(Samples.everyKind());
    }
    String text = Files.readString(file());
    assertThat(text).endsWith("\n");
    List<String> lines = text.lines().toList();
    assertThat(lines).hasSize(Samples.everyKind().size() + 1);
    assertThat(lines.get(0))
        .matches(
            "\\{\"quarterturn\":1,\"session\":\"2027-03-01-relief-k3f9\",\"procedure\":\"relief\","
                + "\"revision\":3,\"digest\":\"(ab){32}\",\"sum\":\"[0-9a-f]{8}\"}");
    assertThat(lines.get(4))
        .matches(
            "\\{\"n\":4,\"at\":\"2027-03-01T09:02:00Z\",\"event\":\"told\",\"step\":\"tools\","
                + "\"sum\":\"[0-9a-f]{8}\"}");
  }

  @Test
  void noControlCharacterStandsInTheFile() throws IOException {
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      journal.append(Samples.everyKind());
    }
    String text = Files.readString(file());
    assertThat(text).contains("größer");
    assertThat(text.codePoints().filter(c -> c != '\n').allMatch(quarterturn.unit.Printable::shown))
        .isTrue();
  }

  @Test
  void aFileThatStandsIsNotMadeAgain() throws IOException {
    Journal.create(file(), Samples.HEADER).close();
    byte[] before = Files.readAllBytes(file());
    assertThrows(
        FileAlreadyExistsException.class, () -> Journal.create(file(), Samples.HEADER).close());
    assertThat(Files.readAllBytes(file())).isEqualTo(before);
  }

  @Test
  void closingLeavesOnlyTheJournal() throws IOException {
    Journal.create(file(), Samples.HEADER).close();
    try (var all = Files.list(folder)) {
      assertThat(all.toList()).containsExactly(file());
    }
  }

  @Test
  void aSecondOpeningIsRefused() throws IOException {
    Journal first = Journal.create(file(), Samples.HEADER);
    Journal.InUse e = assertThrows(Journal.InUse.class, () -> Journal.open(file()).close());
    assertThat(e).hasMessageThat().contains("session demo is open in another window");
    first.append(Samples.everyKind());
    first.close();
    Journal.open(file()).close();
  }

  /** The lock outlasts this process reading the journal it holds, which POSIX would undo. */
  @Test
  void anotherProcessIsKeptOutUntilItIsClosed() throws Exception {
    try (Journal held = Journal.create(file(), Samples.HEADER)) {
      assertThat(Journal.read(file()).events()).isEmpty();
      assertThat(openElsewhere()).isEqualTo(OpenOnce.IN_USE);
      held.append(Samples.everyKind());
    }
    assertThat(openElsewhere()).isEqualTo(OpenOnce.OPENED);
  }

  private int openElsewhere() throws Exception {
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                OpenOnce.class.getName(),
                file().toString())
            .inheritIO()
            .start();
    try {
      assertThat(other.waitFor(60, TimeUnit.SECONDS)).isTrue();
      return other.exitValue();
    } finally {
      other.destroyForcibly();
    }
  }

  @Test
  void aLockFileLeftByACrashIsNoHindrance() throws IOException {
    Journal.create(file(), Samples.HEADER).close();
    Files.createFile(folder.resolve(".demo.jsonl.lock"));
    Journal.open(file()).close();
  }

  @Test
  void whatAnotherProgramAppendsIsNotOverwritten() throws IOException {
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      Files.writeString(file(), "foreign\n", StandardOpenOption.APPEND);
      IOException e =
          assertThrows(IOException.class, () -> journal.append(Samples.everyKind().subList(0, 1)));
      assertThat(e).hasMessageThat().contains("changed by another program");
    }
    assertThat(Files.readString(file())).endsWith("foreign\n");
  }

  /** However many bytes still fit, the file is as it was, and goes on once there is room. */
  @Test
  void aFullDiskLeavesTheFileAsItWas() throws IOException {
    Event first = Samples.everyKind().get(0);
    Event second = Samples.everyKind().get(2);
    Journal.create(file(), Samples.HEADER).close();
    int line = Journal.FORMAT.event(1, first, "00000000").bytes().length;
    for (int room = 0; room < line; room += 7) {
      byte[] before = Files.readAllBytes(file());
      try (Journal journal = onDisk(room, false)) {
        FullDisk disk = disk(journal);
        IOException e = assertThrows(IOException.class, () -> journal.append(List.of(first)));
        assertThat(e).hasMessageThat().contains("nothing was recorded");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
        disk.room = Integer.MAX_VALUE;
        journal.append(List.of(first, second));
        assertThat(Journal.read(file()).events()).containsExactly(first, second).inOrder();
        assertThat(Journal.read(file()).notice()).isNull();
      }
      Files.write(file(), before);
    }
  }

  /** As when it is backed up, or its rights are changed. */
  @Test
  void aFileThatOnlyLooksTouchedGoesOn() throws IOException {
    List<Event> events = Samples.everyKind();
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      for (Event event : events) {
        journal.append(List.of(event));
        Files.setLastModifiedTime(file(), FileTime.fromMillis(events.indexOf(event)));
      }
    }
    assertThat(Journal.read(file()).events()).isEqualTo(events);
  }

  /** What it takes to add a line does not grow with the file, of which nothing is read again. */
  @Test
  void aLongFileTakesAnAnswerAsAShortOneDoes() throws IOException {
    Event event = Samples.everyKind().get(0);
    try (Journal journal = Journal.create(file(), Samples.HEADER)) {
      journal.append(Collections.nCopies(2000, event));
      journal.append(List.of(event));
      long size = Files.size(file());
      ThreadMXBean memory = (ThreadMXBean) ManagementFactory.getThreadMXBean();
      long before = memory.getCurrentThreadAllocatedBytes();
      journal.append(List.of(event));
      long taken = memory.getCurrentThreadAllocatedBytes() - before;
      assertThat(taken).isLessThan(size / 4);
    }
  }

  /** One that is too large is not read, so none is made so large. */
  @Test
  void noFileGrowsSoLargeThatItIsNotRead() throws IOException {
    byte[] most = new byte[1 << 24];
    try (ForcedFile file = ForcedFile.create(file(), new byte[1])) {
      IOException e = assertThrows(IOException.class, () -> file.append(most));
      assertThat(e).hasMessageThat().contains("demo.jsonl would grow too large");
    }
    assertThat(Files.size(file())).isEqualTo(1);
  }

  @Test
  void aTailThatCouldNotBeCutBackIsCutBeforeTheNextLine() throws IOException {
    Event event = Samples.everyKind().get(0);
    Journal.create(file(), Samples.HEADER).close();
    try (Journal journal = onDisk(20, true)) {
      FullDisk disk = disk(journal);
      assertThrows(IOException.class, () -> journal.append(List.of(event)));
      assertThat(Journal.read(file()).notice()).contains("cut short");
      disk.room = Integer.MAX_VALUE;
      disk.stuck = false;
      journal.append(List.of(event));
    }
    assertThat(Journal.read(file()).events()).containsExactly(event);
    assertThat(Journal.read(file()).notice()).isNull();
  }

  private final java.util.Map<Journal, FullDisk> disks = new java.util.HashMap<>();

  private Journal onDisk(int room, boolean stuck) throws IOException {
    FileChannel channel =
        FileChannel.open(file(), StandardOpenOption.READ, StandardOpenOption.WRITE);
    FullDisk disk = new FullDisk(channel, room, stuck);
    byte[] read = Files.readAllBytes(file());
    LogFormat.Scan<Journal.Contents> scan = Journal.FORMAT.scan(read, "demo.jsonl");
    ForcedFile forced =
        new ForcedFile(file(), disk, JournalLock.take(file()), FileIdentity.of(file()));
    forced.keep(read, scan.wholeBytes());
    Journal journal = new Journal(forced, scan);
    disks.put(journal, disk);
    return journal;
  }

  private FullDisk disk(Journal journal) {
    return java.util.Objects.requireNonNull(disks.get(journal));
  }
}
