package quarterturn.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * JSON in ASCII, with every other character escaped, so that no control character reaches a
 * terminal.
 */
public final class AsciiJson {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private AsciiJson() {}

  /** A JSON tree as one line of text. */
  public static String of(JsonNode tree) {
    try {
      return JSON.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can't fail to be written", e);
    }
  }
}
