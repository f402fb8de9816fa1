package quarterturn.session.store.archive;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import quarterturn.platform.Folders;
import quarterturn.session.journal.ForcedFile;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.JournalLock;

/**
 * Unpacks an archive into a data folder. All of it is checked before anything is written; then each
 * file is written whole or not at all, and none over another. One that was stopped in between is
 * done again.
 */
public final class Unpacking {
  private static final String OURS = "unpack";

  private final Path data;

  /** Not beside its place: one that a crash leaves among the sessions would begin as a session. */
  private final Path draft;

  private final Map<Part, Long> made = new EnumMap<>(Part.class);
  private final Map<Part, Long> there = new EnumMap<>(Part.class);
  private final List<String> further = new ArrayList<>();
  private final List<String> differ = new ArrayList<>();

  private Unpacking(Path data) {
    this.data = data;
    this.draft = data.resolve("." + OURS + ".draft");
  }

  /**
   * What became of the files of an archive.
   *
   * @param made how many were written
   * @param there how many stood there already, the same
   * @param further a line for each session that goes on further here than in the archive
   * @param differ a line for each file that stands there and differs, and what to do
   */
  public record Unpacked(
      Map<Part, Long> made, Map<Part, Long> there, List<String> further, List<String> differ) {}

  /**
   * Unpacks an archive.
   *
   * @throws IOException where the archive is not whole, and nothing was written; or where something
   *     could not be written, and the files before it are there
   */
  public static Unpacked of(Path file, Path data) throws IOException {
    Unpacking unpacking = new Unpacking(data);
    try (Archive archive = Archive.open(file)) {
      room(archive.manifest().length(), data);
      for (Manifest.Item item : archive.manifest().items()) {
        archive.bytes(item);
      }
      Folders.make(data);
      try (Closeable alone = unpacking.alone()) {
        Files.deleteIfExists(unpacking.draft); // left by a crash
        for (Manifest.Item item : archive.manifest().items()) {
          unpacking.unpack(item.file(), archive.bytes(item));
        }
      }
    }
    for (Part part : unpacking.made.keySet()) {
      Folders.force(data.resolve(part.folder()));
    }
    Folders.force(data);
    return new Unpacked(
        Map.copyOf(unpacking.made),
        Map.copyOf(unpacking.there),
        List.copyOf(unpacking.further),
        List.copyOf(unpacking.differ));
  }

  /** Refuses what the disk has no room for, before the time is taken to read it all. */
  static void room(long length, Path data) throws IOException {
    Path place = data.toAbsolutePath();
    while (!Files.exists(place) && place.getParent() != null) {
      place = place.getParent();
    }
    long free;
    try {
      free = Files.getFileStore(place).getUsableSpace();
    } catch (IOException | UnsupportedOperationException e) {
      return; // the system does not say
    }
    if (free < length) {
      throw new IOException(
          "it needs %s, and %s has room for %s; nothing was unpacked"
              .formatted(Bytes.words(length), place, Bytes.words(free)));
    }
  }

  /** Keeps another from unpacking here at the same time. */
  private Closeable alone() throws IOException {
    try {
      return JournalLock.take(data.resolve(OURS));
    } catch (Journal.InUse e) {
      throw new IOException("another window is unpacking into " + data + "; wait for it", e);
    }
  }

  private void unpack(Kept file, byte[] bytes) throws IOException {
    Path place = file.in(data);
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      compare(file, bytes);
      return;
    }
    Folders.make(ForcedFile.folder(place));
    try {
      Draft.write(draft, bytes);
      Draft.place(draft, place);
      made.merge(file.part(), 1L, Long::sum);
    } catch (FileAlreadyExistsException e) {
      compare(file, bytes);
    } catch (IOException e) {
      throw new IOException(
          "could not write %s (%s); unpack again, and what is there already stays"
              .formatted(place, Reading.why(e)),
          e);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private void compare(Kept file, byte[] bytes) {
    String path = file.path();
    byte[] here;
    try {
      here = ForcedFile.bytes(file.in(data));
    } catch (IOException e) {
      differ.add(path + " can't be read here; " + move(path));
      return;
    }
    if (Arrays.equals(here, bytes)) {
      there.merge(file.part(), 1L, Long::sum);
    } else if (file.part() == Part.SESSIONS && begins(here, bytes)) {
      further.add(path + " goes on further here");
    } else if (file.part() == Part.SESSIONS && begins(bytes, here)) {
      differ.add(path + " goes on further in the archive; " + move(path));
    } else {
      differ.add(path + " differs from the archive's; " + move(path));
    }
  }

  private static String move(String path) {
    return "to have the archive's, move " + path + " out of the folder and unpack again";
  }

  private static boolean begins(byte[] whole, byte[] first) {
    return whole.length > first.length
        && Arrays.equals(whole, 0, first.length, first, 0, first.length);
  }
}
