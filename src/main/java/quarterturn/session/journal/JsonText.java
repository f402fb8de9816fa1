package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HexFormat;
import java.util.Map;
import quarterturn.unit.Printable;

/**
 * The text of a JSON value, on one line, in which unprintable characters are escaped, so that a
 * file can be shown as it is. A mapper could print it too, but the first prompt and the first
 * answer of a session would wait until that is loaded, and each one after it longer than need be.
 */
public final class JsonText {
  private static final HexFormat HEX = HexFormat.of();

  private JsonText() {}

  public static String of(JsonNode node) {
    StringBuilder out = new StringBuilder(256);
    value(out, node);
    return out.toString();
  }

  private static void value(StringBuilder out, JsonNode node) {
    switch (node.getNodeType()) {
      case OBJECT -> object(out, node);
      case ARRAY -> array(out, node);
      case STRING -> quoted(out, node.textValue());
      default -> out.append(node.asText());
    }
  }

  private static void object(StringBuilder out, JsonNode object) {
    char before = '{';
    for (Map.Entry<String, JsonNode> field : object.properties()) {
      out.append(before);
      quoted(out, field.getKey());
      out.append(':');
      value(out, field.getValue());
      before = ',';
    }
    out.append(before == '{' ? "{}" : "}");
  }

  private static void array(StringBuilder out, JsonNode array) {
    out.append('[');
    for (int i = 0; i < array.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      value(out, array.get(i));
    }
    out.append(']');
  }

  private static void quoted(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '"', '\\' -> out.append('\\').append((char) c);
        case '\b' -> out.append("\\b");
        case '\f' -> out.append("\\f");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (Printable.shown(c)) {
            out.appendCodePoint(c);
          } else {
            escaped(out, c);
          }
        }
      }
    }
    out.append('"');
  }

  private static void escaped(StringBuilder out, int codePoint) {
    for (char unit : Character.toChars(codePoint)) {
      out.append("\\u").append(HEX.toHexDigits(unit));
    }
  }
}
