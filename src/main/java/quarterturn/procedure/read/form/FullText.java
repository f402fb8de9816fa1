package quarterturn.procedure.read.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import quarterturn.procedure.read.yaml.Node;

/** Prints a tree as YAML. It is apart from {@link FullForm}, which every start needs. */
public final class FullText {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final YAMLMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
          .disable(YAMLGenerator.Feature.SPLIT_LINES)
          .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
          .enable(YAMLGenerator.Feature.INDENT_ARRAYS_WITH_INDICATOR)
          .enable(YAMLGenerator.Feature.LITERAL_BLOCK_STYLE)
          .build();

  private FullText() {}

  public static String of(Node tree) {
    try {
      return YAML.writeValueAsString(json(tree));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree that was read can be written", e);
    }
  }

  private static JsonNode json(Node node) {
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = NODES.objectNode();
      mapping.entries().forEach((key, entry) -> object.set(key, json(entry.value())));
      return object;
    }
    if (node instanceof Node.Sequence list) {
      ArrayNode array = NODES.arrayNode();
      list.items().forEach(item -> array.add(json(item)));
      return array;
    }
    return NODES.textNode(node instanceof Node.Scalar scalar ? scalar.text() : "");
  }
}
