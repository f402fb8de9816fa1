package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.platform.FileIdentity;
import quarterturn.platform.FileStamp;
import quarterturn.session.Event;
import quarterturn.session.store.Samples;

/**
 * A file that is not the one at its path any more takes nothing, and all it held stands in another.
 */
class DisplacedTest {
  private static final List<Event> EVENTS = Samples.everyKind();

  @TempDir Path folder;

  /** Something that happens to a file while it is open. */
  private enum Mishap {
    DELETED("was deleted or moved"),
    MOVED("was deleted or moved"),
    REPLACED_BY_AN_OLDER_COPY("was swapped for another file"),
    REPLACED_BY_ITS_OWN_COPY("was swapped for another file"),
    REPLACED_BY_A_FOLDER("was swapped for a folder"),
    REPLACED_BY_A_LINK("was swapped for another file"),
    CUT_IN_PLACE("was changed by another program"),
    CHANGED_IN_PLACE("was changed by another program"),
    CHANGED_AND_DATED_BACK("was changed by another program"),
    FOLDER_MOVED("was lost: its folder was moved or deleted");

    private final String told;

    Mishap(String told) {
      this.told = told;
    }

    void happen(Path file) throws IOException {
      byte[] bytes = Files.readAllBytes(file);
      Path other = file.resolveSibling("elsewhere");
      switch (this) {
        case DELETED -> Files.delete(file);
        case MOVED -> Files.move(file, other);
        case REPLACED_BY_AN_OLDER_COPY -> {
          String text = Files.readString(file);
          Files.writeString(other, text.substring(0, text.indexOf('\n') + 1));
          Files.move(other, file, StandardCopyOption.REPLACE_EXISTING);
        }
        case REPLACED_BY_ITS_OWN_COPY -> {
          Files.write(other, bytes);
          Files.move(other, file, StandardCopyOption.REPLACE_EXISTING);
        }
        case REPLACED_BY_A_FOLDER -> {
          Files.delete(file);
          Files.createDirectory(file);
        }
        case REPLACED_BY_A_LINK -> {
          Files.write(other, bytes);
          Files.delete(file);
          Files.createSymbolicLink(file, other);
        }
        case CUT_IN_PLACE -> {
          try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(bytes.length / 2);
          }
        }
        case CHANGED_IN_PLACE -> {
          bytes[bytes.length / 2] ^= 1;
          later(file, bytes);
        }
        case CHANGED_AND_DATED_BACK -> {
          FileTime then = Files.getLastModifiedTime(file);
          bytes[bytes.length / 2] ^= 1;
          later(file, bytes);
          Files.setLastModifiedTime(file, then);
        }
        case FOLDER_MOVED ->
            Files.move(ForcedFile.folder(file), ForcedFile.folder(file).resolveSibling("moved"));
      }
    }
  }

  /** Writes a file at a time that its system tells from the last. */
  private static void later(Path file, byte[] bytes) throws IOException {
    FileTime then = Files.getLastModifiedTime(file);
    do {
      Files.write(file, bytes);
    } while (Files.getLastModifiedTime(file).equals(then));
  }

  @Test
  void whateverHappensToTheFileAllOfItStandsInAnother() throws IOException {
    for (Mishap mishap : Mishap.values()) {
      Path file = folder.resolve(mishap.name()).resolve("demo.jsonl");
      Files.createDirectory(ForcedFile.folder(file));
      try (Journal journal = Journal.create(file, Samples.HEADER)) {
        journal.append(EVENTS.subList(0, 2));
        mishap.happen(file);
        byte[] left = Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
        DisplacedException e =
            assertThrows(
                DisplacedException.class,
                () -> journal.append(EVENTS.subList(2, 3)),
                mishap.name());
        Path anew = file.resolveSibling("demo-2.jsonl");
        assertThat(e)
            .hasMessageThat()
            .isEqualTo(
                "demo.jsonl "
                    + mishap.told
                    + " while it was open. All that was recorded, your last answer too, is now in "
                    + anew
                    + ". Go on with: quarterturn resume demo-2");
        assertWithMessage(mishap.name())
            .that(Journal.read(anew))
            .isEqualTo(
                new Journal.Contents(
                    new Journal.Header("demo-2", "relief", 3, Samples.HEADER.digest()),
                    EVENTS.subList(0, 3),
                    null,
                    0));
        byte[] after = Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
        assertWithMessage(mishap.name()).that(after).isEqualTo(left);
        assertThrows(DisplacedException.class, () -> journal.append(EVENTS.subList(3, 4)));
      }
      assertThat(names(ForcedFile.folder(file))).contains("demo-2.jsonl");
      assertThat(names(ForcedFile.folder(file))).doesNotContain("demo-3.jsonl");
    }
  }

  @Test
  void aNameThatIsTakenIsLeftAlone() throws IOException {
    Path file = folder.resolve("demo.jsonl");
    Files.writeString(folder.resolve("demo-2.jsonl"), "mine");
    try (Journal journal = Journal.create(file, Samples.HEADER)) {
      Files.delete(file);
      assertThrows(DisplacedException.class, () -> journal.append(EVENTS));
    }
    assertThat(Files.readString(folder.resolve("demo-2.jsonl"))).isEqualTo("mine");
    assertThat(Journal.read(folder.resolve("demo-3.jsonl")).events()).isEqualTo(EVENTS);
  }

  @Test
  void whereNothingCanBeWrittenBesideItItStandsInAFolderOfItsOwn() throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    try (Journal journal = Journal.create(in.resolve("demo.jsonl"), Samples.HEADER)) {
      Files.move(in, folder.resolve("moved"));
      Files.writeString(in, "a file where the folder was");
      DisplacedException e = assertThrows(DisplacedException.class, () -> journal.append(EVENTS));
      assertThat(e).hasMessageThat().contains("since nothing can be written to " + in);
      String path =
          String.valueOf(e.getMessage()).replaceAll("(?s).* is now in (.*), since .*", "$1");
      assertThat(Journal.read(Path.of(path)).events()).isEqualTo(EVENTS);
      Files.delete(Path.of(path));
      Files.delete(ForcedFile.folder(Path.of(path)));
    }
  }

  /** The file was swapped after it was opened and before its key was taken. */
  @Test
  void aSwapThatTheKeyMissedIsFoundByTheFirstLine() throws IOException {
    Path file = folder.resolve("demo.jsonl");
    Journal.create(file, Samples.HEADER).close();
    byte[] bytes = Files.readAllBytes(file);
    FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
    Files.delete(file);
    Files.write(file, bytes);
    ForcedFile forced =
        new ForcedFile(file, channel, JournalLock.take(file), FileIdentity.of(file));
    forced.keep(bytes, bytes.length);
    try (Journal journal = new Journal(forced, Journal.FORMAT.scan(bytes, "demo.jsonl"))) {
      assertThrows(DisplacedException.class, () -> journal.append(EVENTS));
    }
    assertThat(Journal.read(folder.resolve("demo-2.jsonl")).events()).isEqualTo(EVENTS);
  }

  /** Where the system gives no key, as on Windows, the time of making tells files apart. */
  @Test
  void withoutKeysTheTimeOfMakingTells() {
    FileIdentity one = new FileIdentity(null, FileTime.fromMillis(1));
    assertThat(one.same(new FileIdentity(null, FileTime.fromMillis(1)))).isTrue();
    assertThat(one.same(new FileIdentity(null, FileTime.fromMillis(2)))).isFalse();
    assertThat(one.same(new FileIdentity("key", FileTime.fromMillis(2)))).isFalse();
  }

  /** Times of whole seconds leave room for a change that no time tells. */
  @Test
  void wholeSecondsAreNotExact() {
    FileIdentity one = new FileIdentity("key", FileTime.fromMillis(0));
    assertThat(new FileStamp(one, false, 9, FileTime.fromMillis(1001), null).exact()).isTrue();
    assertThat(new FileStamp(one, false, 9, FileTime.fromMillis(2000), null).exact()).isFalse();
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(ForcedFile::name).toList();
    }
  }
}
