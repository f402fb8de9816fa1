package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a strict mapper reads is read the same, and what it refuses is refused. */
class JsonTreeTest {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ",",
          ":",
          "\"a\"",
          "\"b\"",
          "\"\\n\u00e9\"",
          "1",
          "-0",
          "2.50",
          "1e400",
          "99999999999",
          "99999999999999999999",
          "true",
          "false",
          "null",
          " ",
          "\"",
          "x");

  /** Null where it is refused. */
  private static @Nullable JsonNode read(byte[] text) {
    try {
      return JsonTree.of(text);
    } catch (IOException e) {
      return null;
    }
  }

  /** Null where it is refused, or where there is no value at all. */
  private static @Nullable JsonNode mapped(byte[] text) {
    try {
      JsonNode node = MAPPER.readTree(text);
      return node.isMissingNode() ? null : node;
    } catch (IOException e) {
      return null;
    }
  }

  private static void same(byte[] text) {
    assertWithMessage(new String(text, StandardCharsets.UTF_8))
        .that(read(text))
        .isEqualTo(mapped(text));
  }

  @Test
  void wellFormedTextsAreReadAlike() {
    for (String text :
        List.of(
            "{\"a\":{\"b\":[1,2.5,null,true,false,\"c\"]},\"d\":[]}",
            "[99999999999,99999999999999999999,1e400,-0.0,1.0]",
            "\"alone\"",
            " 7 ")) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      assertThat(read(bytes)).isNotNull();
      same(bytes);
    }
  }

  @Test
  void badTextsAreRefused() {
    String deep = "[".repeat(100_000);
    for (String text :
        List.of("", "{", "{\"a\":1,\"a\":2}", "{} {}", "{}x", "[1,]", "{\"a\"}", "nul", deep)) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      assertWithMessage("%s", text.length() > 20 ? "deep" : text).that(read(bytes)).isNull();
      assertThat(mapped(bytes)).isNull();
    }
    assertThat(read(new byte[] {'"', (byte) 0xff, '"'})).isNull();
  }

  @Test
  void anyTextIsReadAsTheMapperReadsIt() {
    Random random = new Random(11);
    int good = 0;
    for (int round = 0; round < 20_000; round++) {
      StringBuilder text = new StringBuilder();
      int pieces = 1 + random.nextInt(9);
      for (int i = 0; i < pieces; i++) {
        text.append(PIECES.get(random.nextInt(PIECES.size())));
      }
      byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      same(bytes);
      good += read(bytes) == null ? 0 : 1;
    }
    assertWithMessage("not all were refused").that(good).isAtLeast(100);
  }
}
