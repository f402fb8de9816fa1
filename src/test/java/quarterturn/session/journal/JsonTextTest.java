package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Printable;

class JsonTextTest {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** Any text, in keys and values, nested or not. */
  @Test
  void whatIsWrittenIsReadBackAsItWasAndCanBeShown() throws IOException {
    Random random = new Random(1);
    for (int i = 0; i < 300; i++) {
      ObjectNode object = NODES.objectNode().put(text(random), text(random));
      object.put("n", random.nextInt()).put("x", random.nextGaussian()).putNull("none");
      object.putArray("list").add(text(random)).add(true).add(NODES.arrayNode().add(1));
      object.putObject("in").set(text(random), NODES.objectNode());
      String written = JsonText.of(object);
      assertThat(JsonTree.of(written.getBytes(StandardCharsets.UTF_8))).isEqualTo(object);
      assertThat(written.codePoints().allMatch(Printable::shown)).isTrue();
    }
  }

  /** What can be shown is written as other programs write it. */
  @Test
  void printableTextIsWrittenAsUsual() {
    JsonNode plain = NODES.objectNode().put("größer", "a \"b\" \\ /\t\n\r\b\f \uD83C\uDFB8 1e3");
    assertThat(JsonText.of(plain)).isEqualTo(plain.toString());
  }

  /** Whole characters only, since half a pair can't stand in UTF-8. */
  private static String text(Random random) {
    StringBuilder out = new StringBuilder();
    for (int i = random.nextInt(12); i > 0; i--) {
      int c = random.nextInt(random.nextBoolean() ? 0x100 : Character.MAX_CODE_POINT + 1);
      out.appendCodePoint(c >= 0xD800 && c < 0xE000 ? '"' : c);
    }
    return out.toString();
  }
}
