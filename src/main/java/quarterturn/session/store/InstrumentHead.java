package quarterturn.session.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What an instrument's file shows at a look, before it is read as YAML: lists ask it of every one.
 *
 * @param named whether it may be of the instrument of its name, damaged or not: no copy, and a text
 * @param ticketed whether it may have a ticket
 */
record InstrumentHead(boolean named, boolean ticketed) {
  private static final String NAME = "name:";

  static InstrumentHead of(Path file, String name) {
    try (InputStream in = Files.newInputStream(file)) {
      ByteBuffer bytes = ByteBuffer.wrap(in.readNBytes(InstrumentFile.MOST_BYTES));
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
      boolean named = true;
      int line = 0;
      while (line < text.length()) {
        int end = text.indexOf('\n', line);
        int to = end < 0 ? text.length() : end;
        named &= !text.startsWith(NAME, line) || name.equals(value(text.substring(line, to)));
        line = to + 1;
      }
      return new InstrumentHead(named, text.contains(FormField.TICKET.word()));
    } catch (IOException e) {
      return new InstrumentHead(false, false);
    }
  }

  /** The value of a line, without its comment and its quotes. */
  private static String value(String line) {
    int comment = line.indexOf(" #");
    String value = line.substring(NAME.length(), comment < 0 ? line.length() : comment).strip();
    boolean quoted = value.length() > 1 && "\"'".indexOf(value.charAt(0)) >= 0;
    return quoted ? value.substring(1, value.length() - 1) : value;
  }
}
