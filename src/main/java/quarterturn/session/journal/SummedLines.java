package quarterturn.session.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/**
 * The lines of an append-only file, each one JSON object.
 *
 * <p>Each line ends in a sum: CRC-32 over the sum of the line before it and this line's own bytes
 * up to {@code ,"sum"}. Since the sums are chained, a line that was changed, removed, doubled or
 * moved shows, and the first that does not fit is named.
 */
public final class SummedLines {
  private static final String SUM = ",\"sum\":\"";
  private static final int SUM_DIGITS = 8;
  private static final int TAIL = SUM.length() + SUM_DIGITS + "\"}".length();

  private SummedLines() {}

  /** A line to append, its newline included, and its sum. */
  public record Line(String text, String sum) {
    public byte[] bytes() {
      return text.getBytes(StandardCharsets.UTF_8);
    }
  }

  /** Takes the lines of a file, the first one first. */
  public interface Taker {
    /**
     * Takes one whole line.
     *
     * @param line counted from one
     * @param before the sum of the line before it; empty before the first
     * @throws NotAnEventException saying why it can't be used
     */
    void take(byte[] bytes, int line, String before) throws NotAnEventException;
  }

  /**
   * How far a file can be used.
   *
   * @param wholeBytes length of the lines that stand, so where the next one goes
   * @param sum of the last line that stands
   * @param notice what is wrong with the file in a sentence for the user, or null
   * @param damagedAtLine the first line that can't be used, counted from one; 0 where the file is
   *     sound or only its last line was cut short
   */
  public record Scan(long wholeBytes, String sum, @Nullable String notice, int damagedAtLine) {}

  /**
   * The line of an object.
   *
   * @param before the sum of the line before it; empty before the first
   */
  public static Line line(ObjectNode object, String before) {
    String text = object.toString();
    String body = shown(text.substring(0, text.length() - 1));
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    String sum = sum(before, bytes, bytes.length);
    return new Line(body + SUM + sum + "\"}\n", sum);
  }

  /**
   * Reads a whole file.
   *
   * @param name the file's name, for the notices
   * @param what what it holds, with its article, and how to begin anew, for a file without a first
   *     line
   */
  public static Scan scan(byte[] file, String name, String what, Taker taker) {
    String sum = "";
    int start = 0;
    for (int line = 1; ; line++) {
      int end = newline(file, start);
      if (end < 0) {
        boolean sound = start == file.length && line > 1;
        return new Scan(start, sum, sound ? null : torn(name, line, what), line == 1 ? 1 : 0);
      }
      byte[] bytes = Arrays.copyOfRange(file, start, end);
      try {
        taker.take(bytes, line, sum);
      } catch (NotAnEventException e) {
        return new Scan(start, sum, damaged(name, line, String.valueOf(e.getMessage())), line);
      }
      sum = statedSum(bytes);
      start = end + 1;
    }
  }

  /** The object that a line stands for, its sum unchecked and still in it. */
  public static ObjectNode parse(byte[] line) throws NotAnEventException {
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
   * The object of a first line, without its sum, which agrees.
   *
   * @param format the newest that is read
   * @param of what a file of it holds, as in "a session"
   */
  public static ObjectNode header(byte[] line, int format, String of) throws NotAnEventException {
    ObjectNode node = parse(line);
    JsonNode version = node.path("quarterturn");
    if (version.isInt() && version.intValue() > format) {
      // Looked at first: a newer format may well reckon its sums in another way.
      throw new NotAnEventException(
          "the file is in format %d and this program reads format %d: use a newer quarterturn"
              .formatted(version.intValue(), format));
    }
    if (version.isMissingNode()) {
      throw new NotAnEventException("the file does not begin like " + of + " of quarterturn");
    }
    check(line, "");
    if (new Fields(node).whole("quarterturn") != format) {
      throw new NotAnEventException("format " + version + " is unknown");
    }
    node.remove(List.of("quarterturn", "sum"));
    return node;
  }

  /**
   * The object of a numbered line, without its number and its sum, which agree.
   *
   * @param n the number it should have
   */
  public static ObjectNode numbered(byte[] line, int n, String before) throws NotAnEventException {
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

  /** Escapes what no terminal should be sent, so that a file can be shown as it is. */
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

  private static int newline(byte[] file, int from) {
    for (int i = from; i < file.length; i++) {
      if (file[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  private static String statedSum(byte[] line) {
    int from = line.length - SUM_DIGITS - 2;
    return new String(line, from, SUM_DIGITS, StandardCharsets.US_ASCII);
  }

  private static String torn(String name, int line, String what) {
    if (line == 1) {
      return name + " has no whole first line, so there is no " + what;
    }
    return "the last line of "
        + name
        + " was cut short, as when the machine stops while writing; it is left out, and what stands"
        + " before it is kept";
  }

  private static String damaged(String name, int line, String what) {
    return "line %d of %s: %s. %s"
        .formatted(
            line,
            name,
            what,
            line == 1
                ? "Nothing in it can be used."
                : "The %d events before it are kept and can be read; nothing can be added."
                    .formatted(line - 2));
  }
}
