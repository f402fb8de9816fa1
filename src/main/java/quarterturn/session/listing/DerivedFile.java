package quarterturn.session.listing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.zip.CRC32;

/**
 * A file of lines that were worked out from others, to be read in their place. Its first line has
 * its format and the sum of all that follows. One that is missing or wrong holds nothing; where one
 * can't be written nothing is lost but time.
 *
 * @param file where it stands
 * @param format what its first line begins with
 */
record DerivedFile(Path file, String format) {
  private static final String DRAFT = ".draft";
  private static final int COMMON = 127;

  /** What each of its lines holds; nothing where it is missing or wrong. */
  <T> List<T> lines(Function<IndexCells, T> reader) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException e) {
      return List.of();
    }
    int at = 0;
    while (at < bytes.length && bytes[at] != '\n') {
      at++;
    }
    at = Math.min(at + 1, bytes.length);
    String head = new String(bytes, 0, at, StandardCharsets.UTF_8);
    if (!head.equals(format + " " + sum(bytes, at) + "\n")) {
      return List.of();
    }
    String body = new String(bytes, at, bytes.length - at, StandardCharsets.UTF_8);
    List<T> lines = new ArrayList<>();
    String[] common = new String[COMMON];
    int from = 0;
    int end = body.indexOf('\n');
    try {
      while (end >= 0) {
        lines.add(reader.apply(new IndexCells(body, from, end, common)));
        from = end + 1;
        end = body.indexOf('\n', from);
      }
    } catch (IllegalArgumentException | DateTimeException e) {
      return List.of(); // as by another version of the program
    }
    return lines;
  }

  /** Writes it anew, where that can be done. */
  void write(CharSequence body) {
    byte[] bytes = body.toString().getBytes(StandardCharsets.UTF_8);
    Path draft = file.resolveSibling(file.getFileName() + DRAFT);
    try {
      // Not forced: its sum tells whether all of it is there.
      try (OutputStream out = Files.newOutputStream(draft)) {
        out.write((format + " " + sum(bytes, 0) + "\n").getBytes(StandardCharsets.UTF_8));
        out.write(bytes);
      }
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      // A folder that can't be written to is read without it.
    }
  }

  private static String sum(byte[] bytes, int from) {
    CRC32 crc = new CRC32();
    crc.update(bytes, from, bytes.length - from);
    return Long.toHexString(crc.getValue());
  }
}
