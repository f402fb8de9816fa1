package quarterturn.session;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/**
 * The text of a journal, apart from any file: lines from events and back.
 *
 * <p>Each line ends in a sum: CRC-32 over the sum of the line before it and this line's own bytes
 * up to {@code ,"sum"}. Since the sums are chained, a line that was changed, removed, doubled or
 * moved shows, and the first that does not fit is named.
 */
final class JournalText {
  /** The version this program writes, and the newest it reads. */
  static final int FORMAT = 1;

  private static final String SUM = ",\"sum\":\"";
  private static final int SUM_DIGITS = 8;
  private static final int TAIL = SUM.length() + SUM_DIGITS + "\"}".length();

  private JournalText() {}

  /** A line to append, its newline included, and its sum. */
  record Line(String text, String sum) {
    byte[] bytes() {
      return text.getBytes(StandardCharsets.UTF_8);
    }
  }

  /**
   * What a file's bytes say.
   *
   * @param wholeBytes length of the lines that stand, so where the next one goes
   * @param sum of the last line that stands
   */
  record Scan(Journal.Contents contents, long wholeBytes, String sum) {}

  static Line header(Journal.Header header) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("quarterturn", FORMAT).put("session", header.session());
    node.put("procedure", header.procedure()).put("revision", header.revision());
    node.put("digest", header.digest());
    return line(node.toString(), "");
  }

  /**
   * The line of an event.
   *
   * @param n its number, counted from one
   * @param before the sum of the line before it
   */
  static Line event(int n, Event event, String before) {
    return line("{\"n\":" + n + "," + EventJson.write(event).toString().substring(1), before);
  }

  private static Line line(String object, String before) {
    String body = shown(object.substring(0, object.length() - 1));
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    String sum = sum(before, bytes, bytes.length);
    return new Line(body + SUM + sum + "\"}\n", sum);
  }

  /** Escapes what no terminal should be sent, so that a journal can be shown as it is. */
  private static String shown(String json) {
    StringBuilder out = new StringBuilder(json.length());
    json.codePoints()
        .forEach(
            c -> {
              if (Printable.shown(c)) {
                out.appendCodePoint(c);
              } else {
                for (char unit : Character.toChars(c)) {
                  out.append("\\u").append(HexFormat.of().toHexDigits(unit));
                }
              }
            });
    return out.toString();
  }

  private static String sum(String before, byte[] bytes, int length) {
    CRC32 crc = new CRC32();
    crc.update(before.getBytes(StandardCharsets.US_ASCII));
    crc.update(bytes, 0, length);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  /**
   * Reads a whole file.
   *
   * @param name the file's name, for the notices
   */
  static Scan scan(byte[] file, String name) {
    List<Event> events = new ArrayList<>();
    Journal.@Nullable Header header = null;
    String sum = "";
    int start = 0;
    for (int line = 1; ; line++) {
      int end = newline(file, start);
      if (end < 0) {
        String notice = start == file.length && line > 1 ? null : torn(name, line);
        int damaged = line == 1 ? 1 : 0;
        return new Scan(new Journal.Contents(header, events, notice, damaged), start, sum);
      }
      byte[] bytes = Arrays.copyOfRange(file, start, end);
      try {
        if (header == null) {
          header = readHeader(bytes);
        } else {
          events.add(readEvent(bytes, line - 1, sum));
        }
      } catch (NotAnEvent e) {
        String notice = damaged(name, line, events.size(), String.valueOf(e.getMessage()));
        return new Scan(new Journal.Contents(header, events, notice, line), start, sum);
      }
      sum = statedSum(bytes);
      start = end + 1;
    }
  }

  private static int newline(byte[] file, int from) {
    for (int i = from; i < file.length; i++) {
      if (file[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  private static Journal.Header readHeader(byte[] line) throws NotAnEvent {
    ObjectNode node = parse(line);
    JsonNode version = node.path("quarterturn");
    if (version.isInt() && version.intValue() > FORMAT) {
      // Looked at first: a newer format may well reckon its sums in another way.
      throw new NotAnEvent(
          "the file is in format %d and this program reads format %d: use a newer quarterturn"
              .formatted(version.intValue(), FORMAT));
    }
    if (version.isMissingNode()) {
      throw new NotAnEvent("the file does not begin like a session of quarterturn");
    }
    checkSum(line, "");
    Fields f = new Fields(node);
    if (f.whole("quarterturn") != FORMAT) {
      throw new NotAnEvent("format " + version + " is unknown");
    }
    f.text("sum");
    Journal.Header header =
        new Journal.Header(
            f.text("session"), f.text("procedure"), f.whole("revision"), f.text("digest"));
    f.nothingElse();
    return header;
  }

  private static Event readEvent(byte[] line, int n, String before) throws NotAnEvent {
    ObjectNode node = parse(line);
    JsonNode stated = node.path("n");
    if (stated.isInt() && stated.intValue() != n) {
      throw new NotAnEvent(
          "here event %d should stand, and event %d does: lines were removed, doubled or moved"
              .formatted(n, stated.intValue()));
    }
    checkSum(line, before);
    node.remove(List.of("n", "sum"));
    return EventJson.read(node);
  }

  private static ObjectNode parse(byte[] line) throws NotAnEvent {
    try {
      JsonNode node = JsonTree.of(line);
      if (node instanceof ObjectNode object) {
        return object;
      }
      throw new NotAnEvent("it is no JSON object");
    } catch (JsonProcessingException e) {
      throw new NotAnEvent("it is no whole JSON object");
    } catch (IOException e) {
      // Bytes that are no UTF-8 come out here.
      throw new NotAnEvent("it is no readable text");
    }
  }

  private static void checkSum(byte[] line, String before) throws NotAnEvent {
    int body = Math.max(0, line.length - TAIL);
    String tail = new String(line, body, line.length - body, StandardCharsets.ISO_8859_1);
    if (!tail.equals(SUM + sum(before, line, body) + "\"}")) {
      throw new NotAnEvent(
          "it does not agree with its sum: something changed it, or the line before");
    }
  }

  private static String statedSum(byte[] line) {
    int from = line.length - SUM_DIGITS - 2;
    return new String(line, from, SUM_DIGITS, StandardCharsets.US_ASCII);
  }

  private static String torn(String name, int line) {
    if (line == 1) {
      return name + " has no whole first line, so there is no session in it; start a new session";
    }
    return "the last line of "
        + name
        + " was cut short, as when the machine stops while writing; it is left out, and what stands"
        + " before it is kept";
  }

  private static String damaged(String name, int line, int kept, String what) {
    return "line %d of %s: %s. %s"
        .formatted(
            line,
            name,
            what,
            line == 1
                ? "Nothing in it can be used."
                : "The %d events before it are kept and can be read; nothing can be added."
                    .formatted(kept));
  }
}
