package quarterturn.session.store.archive;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import quarterturn.platform.Folders;
import quarterturn.session.journal.ForcedFile;
import quarterturn.unit.Printable;

/**
 * Packs what a data folder keeps into one new file, a ZIP whose first entry is a {@link Manifest}.
 * The same files give the same bytes. Sessions are only ever appended to, so that one which is open
 * is packed up to its last whole line, without a lock.
 */
public final class Packing {
  /** The time of every entry, the earliest that a ZIP can tell. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Path data;
  private final List<Manifest.Item> items = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  private Packing(Path data) {
    this.data = data;
  }

  /** Thrown where a file is not as it was when it was looked at. */
  private static final class Changed extends IOException {
    private static final long serialVersionUID = 1L;

    Changed(String what) {
      super(what + "; nothing was packed; try again");
    }
  }

  /**
   * What was packed.
   *
   * @param left a line for each thing in the folder that was left out, and why
   * @param bytes the length of the archive
   */
  public record Packed(long sessions, long instruments, List<String> left, long bytes) {}

  /**
   * Packs a folder.
   *
   * @param to the new file; nothing may stand there, and it may not be in the folder itself
   * @throws IOException where it could not be written; then nothing of it is left
   */
  public static Packed of(Path data, Path to) throws IOException {
    Path beside = folder(data, to);
    Packing packing = new Packing(data);
    packing.look();
    if (packing.items.isEmpty()) {
      throw new IOException("there is no session and no instrument in " + data + " to pack");
    }
    long bytes = packing.placed(beside, to);
    return new Packed(
        packing.count(Part.SESSIONS),
        packing.count(Part.INSTRUMENTS),
        List.copyOf(packing.left),
        bytes);
  }

  /** Writes the archive beside its place, then puts it there; returns its length. */
  private long placed(Path beside, Path to) throws IOException {
    try {
      Path draft = Files.createTempFile(beside, "." + to.getFileName() + ".", ".draft");
      try {
        write(draft);
        long bytes = Files.size(draft);
        Draft.place(draft, to);
        Folders.force(beside);
        return bytes;
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (FileAlreadyExistsException e) {
      throw there(to);
    } catch (Changed e) {
      throw e;
    } catch (IOException e) {
      throw new IOException(
          "could not write " + to + " (" + Reading.why(e) + "); nothing was packed", e);
    }
  }

  private long count(Part part) {
    return items.stream().filter(item -> item.file().part() == part).count();
  }

  /** The folder of a file to be made. */
  private static Path folder(Path data, Path to) throws IOException {
    if (Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
      throw there(to);
    }
    Path beside = to.toAbsolutePath().getParent();
    if (beside == null || !Files.isDirectory(beside)) {
      throw new FileSystemException(to.toString(), null, "there is no folder for it; make it");
    }
    if (Files.isDirectory(data) && beside.toRealPath().startsWith(data.toRealPath())) {
      throw new FileSystemException(
          to.toString(), null, "it would stand in the data folder itself; choose another place");
    }
    return beside;
  }

  private static FileSystemException there(Path to) {
    return new FileSystemException(
        to.toString(), null, "is there already, and was left as it is; choose another name");
  }

  /** Finds what is to be packed, with its sums. */
  private void look() throws IOException {
    DataFolder folder = DataFolder.at(data, Part.values());
    for (DataFolder.Stray stray : folder.strays()) {
      left.add(Printable.of(stray.path() + ": " + stray.why()));
    }
    for (Kept file : folder.kept()) {
      byte[] bytes;
      try {
        bytes = whole(file);
      } catch (IOException e) {
        left.add(Printable.of(file.path() + ": it can't be read: " + Reading.why(e)));
        continue;
      }
      if (bytes.length == 0) {
        left.add(file.path() + ": there is no whole line in it");
      } else {
        items.add(Manifest.Item.of(file, bytes));
      }
    }
    items.sort(Comparator.comparing(item -> item.file().path()));
  }

  /** The bytes of a file; of a session as far as its lines are whole. */
  private byte[] whole(Kept file) throws IOException {
    byte[] bytes = ForcedFile.bytes(file.in(data));
    int end = bytes.length;
    while (file.part() == Part.SESSIONS && end > 0 && bytes[end - 1] != '\n') {
      end--;
    }
    return Arrays.copyOf(bytes, end);
  }

  private void write(Path draft) throws IOException {
    try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE);
        ZipOutputStream zip =
            new ZipOutputStream(new BufferedOutputStream(Channels.newOutputStream(channel)))) {
      add(zip, Manifest.NAME, new Manifest(items).bytes());
      for (Manifest.Item item : items) {
        add(zip, item.file().path(), again(item));
      }
      zip.finish();
      zip.flush();
      channel.force(true);
    }
  }

  /** What a file held when it was looked at, read anew: all together may not fit into memory. */
  private byte[] again(Manifest.Item item) throws Changed {
    try {
      byte[] bytes = ForcedFile.bytes(item.file().in(data));
      boolean grown = item.file().part() == Part.SESSIONS && bytes.length > item.length();
      byte[] before = grown ? Arrays.copyOf(bytes, (int) item.length()) : bytes;
      if (item.holds(before)) {
        return before;
      }
    } catch (IOException e) {
      throw new Changed(item.file().path() + " went while it was packed");
    }
    throw new Changed(item.file().path() + " was changed while it was packed");
  }

  private static void add(ZipOutputStream zip, String path, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(path);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }
}
