package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Other words in a file of summed lines: every line is written anew, so that its sums hold. */
public final class Rewording {
  private Rewording() {}

  /**
   * The bytes of a file with other words in it. A last line that was cut short is left out.
   *
   * @param of what the file holds, such as "a session"
   * @param words what becomes of a text, by the key it stands under, at any depth
   * @throws NotAnEventException where the file is damaged: no new sum may cover that up
   */
  public static byte[] of(byte[] file, String of, Map<String, UnaryOperator<String>> words)
      throws NotAnEventException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String was = "";
    String is = "";
    int start = 0;
    int end = SummedLines.newline(file, start);
    for (int n = 0; end >= 0; n++) {
      byte[] bytes = Arrays.copyOfRange(file, start, end);
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      if (n == 0) {
        node.put("quarterturn", SummedLines.FORMAT).setAll(SummedLines.header(bytes, of));
      } else {
        node.put("n", n).setAll(SummedLines.numbered(bytes, n, was));
      }
      reword(node, words);
      SummedLines.Line line = SummedLines.line(node, is);
      out.writeBytes(line.bytes());
      was = SummedLines.statedSum(bytes);
      is = line.sum();
      start = end + 1;
      end = SummedLines.newline(file, start);
    }
    return out.toByteArray();
  }

  private static void reword(JsonNode node, Map<String, UnaryOperator<String>> words) {
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              field -> {
                UnaryOperator<String> to = words.get(field.getKey());
                if (to != null && field.getValue().isTextual()) {
                  field.setValue(TextNode.valueOf(to.apply(field.getValue().textValue())));
                }
              });
    }
    node.forEach(inner -> reword(inner, words));
  }
}
