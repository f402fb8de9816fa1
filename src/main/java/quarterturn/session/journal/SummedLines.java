package quarterturn.session.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;

/**
 * The lines of an append-only file, each a JSON object with a checksum.
 *
 * <p>Each line ends in a sum: CRC-32 over the sum of the line before it and this line's own bytes
 * up to {@code ,"sum"}. Since each sum depends on the one before, the first line that was changed,
 * removed, doubled or moved is found.
 */
public final class SummedLines {
  /** Version of the format that is written, and the newest that is read. */
  static final int FORMAT = 1;

  private static final String SUM = ",\"sum\":\"";
  private static final int SUM_DIGITS = 8;
  private static final int TAIL = SUM.length() + SUM_DIGITS + "\"}".length();

  private SummedLines() {}

  /** A line to append, with its line break, and its sum. */
  public record Line(String text, String sum) {
    public byte[] bytes() {
      return text.getBytes(StandardCharsets.UTF_8);
    }
  }

  /**
   * The line for an object.
   *
   * @param before the sum of the line before it; empty for the first
   */
  static Line line(ObjectNode object, String before) {
    String text = JsonText.of(object);
    String body = text.substring(0, text.length() - 1);
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    String sum = sum(before, bytes, bytes.length);
    return new Line(body + SUM + sum + "\"}\n", sum);
  }

  /** The object of a line, with its sum unchecked and still in it. */
  static ObjectNode parse(byte[] line) throws NotAnEventException {
    try {
      JsonNode node = JsonTree.of(line);
      if (node instanceof ObjectNode object) {
        return object;
      }
      throw new NotAnEventException("it is no JSON object");
    } catch (JsonProcessingException e) {
      throw new NotAnEventException("it is no whole JSON object");
    } catch (IOException e) {
      // Bytes that are no UTF-8 come out here.
      throw new NotAnEventException("it is no readable text");
    }
  }

  /**
   * The object of a first line, without its sum, which is checked.
   *
   * @param of the thing a file holds, such as "a session"
   */
  static ObjectNode header(byte[] line, String of) throws NotAnEventException {
    ObjectNode node = parse(line);
    JsonNode version = node.path("quarterturn");
    if (version.isInt() && version.intValue() > FORMAT) {
      // Looked at first: a newer format may well reckon its sums in another way.
      throw new NotAnEventException(
          "the file is in format %d and this program reads format %d: use a newer quarterturn"
              .formatted(version.intValue(), FORMAT));
    }
    if (version.isMissingNode()) {
      throw new NotAnEventException("the file does not begin like " + of + " of quarterturn");
    }
    check(line, "");
    if (new Fields(node).whole("quarterturn") != FORMAT) {
      throw new NotAnEventException("format " + version + " is unknown");
    }
    node.remove(List.of("quarterturn", "sum"));
    return node;
  }

  /**
   * The object of a numbered line, without its number and sum, which are checked.
   *
   * @param n the number that the line should have
   */
  static ObjectNode numbered(byte[] line, int n, String before) throws NotAnEventException {
    ObjectNode node = parse(line);
    JsonNode stated = node.path("n");
    if (stated.isInt() && stated.intValue() != n) {
      throw new NotAnEventException(
          "here event %d should stand, and event %d does: lines were removed, doubled or moved"
              .formatted(n, stated.intValue()));
    }
    check(line, before);
    node.remove(List.of("n", "sum"));
    return node;
  }

  private static void check(byte[] line, String before) throws NotAnEventException {
    int body = Math.max(0, line.length - TAIL);
    String tail = new String(line, body, line.length - body, StandardCharsets.ISO_8859_1);
    if (!tail.equals(SUM + sum(before, line, body) + "\"}")) {
      throw new NotAnEventException(
          "it does not agree with its sum: something changed it, or the line before");
    }
  }

  private static String sum(String before, byte[] bytes, int length) {
    CRC32 crc = new CRC32();
    crc.update(before.getBytes(StandardCharsets.US_ASCII));
    crc.update(bytes, 0, length);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  static int newline(byte[] file, int from) {
    for (int i = from; i < file.length; i++) {
      if (file[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  static String statedSum(byte[] line) {
    int from = line.length - SUM_DIGITS - 2;
    return new String(line, from, SUM_DIGITS, StandardCharsets.US_ASCII);
  }
}
