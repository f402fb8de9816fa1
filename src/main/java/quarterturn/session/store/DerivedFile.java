package quarterturn.session.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
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
  private static final int LENGTH = 256;

  /** Its lines; none where it is missing or wrong. */
  List<String> lines() {
    String text;
    try {
      text = Files.readString(file);
    } catch (IOException e) {
      return List.of();
    }
    int at = text.indexOf('\n') + 1;
    String body = text.substring(at);
    if (!text.startsWith(format + " " + sum(body) + "\n")) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(body.length() / LENGTH + 1);
    int from = 0;
    int end = body.indexOf('\n');
    while (end >= 0) {
      lines.add(body.substring(from, end));
      from = end + 1;
      end = body.indexOf('\n', from);
    }
    return lines;
  }

  /** Writes it anew, where that can be done. */
  void write(CharSequence body) {
    String text = body.toString();
    Path draft = file.resolveSibling(file.getFileName() + DRAFT);
    try {
      // Not forced: its sum tells whether all of it is there.
      Files.writeString(draft, format + " " + sum(text) + "\n" + text, StandardCharsets.UTF_8);
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      // A folder that can't be written to is read without it.
    }
  }

  private static String sum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(crc.getValue());
  }
}
