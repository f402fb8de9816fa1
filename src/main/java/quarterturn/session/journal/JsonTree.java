package quarterturn.session.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/**
 * Reads one JSON value. A mapper could do so too, but takes longer to load than all sessions take
 * to read, and the home view waits for them.
 */
final class JsonTree {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private JsonTree() {}

  /**
   * The value of a JSON text.
   *
   * @throws IOException where the text is incomplete, is followed by anything, or has a field twice
   */
  static JsonNode of(byte[] text) throws IOException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        throw new JsonParseException(parser, "there is nothing");
      }
      JsonNode value = value(parser);
      if (parser.nextToken() != null) {
        throw new JsonParseException(parser, "something follows");
      }
      return value;
    }
  }

  private static JsonNode value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> whole(parser);
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> throw new JsonParseException(parser, "no value stands here");
    };
  }

  private static JsonNode object(JsonParser parser) throws IOException {
    ObjectNode node = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      node.set(name, value(parser));
    }
    return node;
  }

  private static JsonNode array(JsonParser parser) throws IOException {
    ArrayNode node = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      node.add(value(parser));
    }
    return node;
  }

  private static JsonNode whole(JsonParser parser) throws IOException {
    return switch (parser.getNumberType()) {
      case INT -> NODES.numberNode(parser.getIntValue());
      case LONG -> NODES.numberNode(parser.getLongValue());
      default -> NODES.numberNode(parser.getBigIntegerValue());
    };
  }
}
