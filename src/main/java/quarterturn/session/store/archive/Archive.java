package quarterturn.session.store.archive;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import quarterturn.session.journal.ForcedFile;
import quarterturn.unit.Printable;

/** An archive that is open: its entries are those of its manifest, and nothing else. */
final class Archive implements Closeable {
  private final Path file;
  private final ZipFile zip;
  private final Manifest manifest;

  private Archive(Path file, ZipFile zip, Manifest manifest) {
    this.file = file;
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens an archive; the sums of its files are not yet looked at.
   *
   * @throws IOException where it is none, or no whole one
   */
  static Archive open(Path file) throws IOException {
    if (!Files.exists(file)) {
      throw new FileSystemException(file.toString(), null, "there is no such file");
    }
    if (!Files.isRegularFile(file)) {
      throw none(file, "it is no plain file");
    }
    ZipFile zip = null;
    try {
      zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
      return new Archive(file, zip, manifest(zip));
    } catch (IOException | IllegalArgumentException e) {
      if (zip != null) {
        zip.close();
      }
      throw none(file, e);
    }
  }

  private static Manifest manifest(ZipFile zip) throws IOException {
    List<? extends ZipEntry> entries = Collections.list(zip.entries());
    if (entries.isEmpty() || !entries.get(0).getName().equals(Manifest.NAME)) {
      throw new NoArchiveException("it does not begin with a manifest");
    }
    Manifest manifest = Manifest.read(bytes(zip, entries.get(0), (int) ForcedFile.MOST_BYTES));
    List<Manifest.Item> items = manifest.items();
    for (int i = 1; i < entries.size(); i++) {
      String name = entries.get(i).getName();
      if (i > items.size() || !name.equals(items.get(i - 1).file().path())) {
        throw new NoArchiveException("its manifest does not name " + name + " there");
      }
      if (entries.get(i).getSize() > items.get(i - 1).length()) {
        throw new NoArchiveException("its " + name + " is longer than its manifest says");
      }
    }
    if (entries.size() <= items.size()) {
      String name = items.get(entries.size() - 1).file().path();
      throw new NoArchiveException("its manifest names " + name + ", which is not in it");
    }
    return manifest;
  }

  /** The bytes of an entry, whatever length it states of itself. */
  private static byte[] bytes(ZipFile zip, ZipEntry entry, int most) throws IOException {
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] bytes = in == null ? new byte[0] : in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new NoArchiveException("its " + entry.getName() + " is longer than it may be");
      }
      return bytes;
    }
  }

  Manifest manifest() {
    return manifest;
  }

  /**
   * The bytes of a file, which agree with its length and sum.
   *
   * @throws IOException where they don't
   */
  byte[] bytes(Manifest.Item item) throws IOException {
    try {
      ZipEntry entry = zip.getEntry(item.file().path());
      byte[] bytes = entry == null ? new byte[0] : bytes(zip, entry, (int) item.length());
      if (!item.holds(bytes)) {
        throw new NoArchiveException("its " + item.file().path() + " does not agree with its sum");
      }
      return bytes;
    } catch (IOException | IllegalArgumentException e) {
      throw none(file, e);
    }
  }

  private static IOException none(Path file, Exception e) {
    if (e instanceof NoArchiveException) {
      return none(file, String.valueOf(e.getMessage()));
    }
    boolean damaged =
        e instanceof ZipException
            || e instanceof EOFException
            || e instanceof IllegalArgumentException;
    return damaged
        ? none(file, "it was cut short or damaged, or is no ZIP at all")
        : new IOException(file + " can't be read: " + e.getMessage(), e);
  }

  private static IOException none(Path file, String why) {
    return new IOException(
        file + " is no whole archive: " + Printable.of(why) + "; nothing was unpacked");
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
