package quarterturn.procedure.read;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.read.yaml.Node;

/**
 * A procedure written out: every short form replaced by the steps that it stands for, which are all
 * that the engine and the checker know.
 */
final class FullForm {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final YAMLMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
          .disable(YAMLGenerator.Feature.SPLIT_LINES)
          .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
          .enable(YAMLGenerator.Feature.INDENT_ARRAYS_WITH_INDICATOR)
          .enable(YAMLGenerator.Feature.LITERAL_BLOCK_STYLE)
          .build();

  /** The key of the first step. */
  static final String BEGIN = "begin";

  private FullForm() {}

  /** The tree of a file with its steps written out; any other tree as it is. */
  static Node of(Node file) {
    if (!(file instanceof Node.Mapping mapping)) {
      return file;
    }
    Node.Entry steps = mapping.entries().get("steps");
    if (steps == null || !(steps.value() instanceof Node.Sequence list)) {
      return file;
    }
    List<Node> written = InOrder.of(Parts.of(Unnamed.of(list.items())));
    Map<String, Node.Entry> entries = new LinkedHashMap<>(mapping.entries());
    entries.remove("steps");
    Node.Scalar first = InOrder.first(written);
    if (first != null) {
      entries.putIfAbsent(BEGIN, new Node.Entry(steps.key(), first));
    }
    entries.put("steps", new Node.Entry(steps.key(), new Node.Sequence(written, list.mark())));
    return new Node.Mapping(entries, mapping.mark());
  }

  /** The tree of a file as YAML, written out. */
  static String text(Node file) {
    try {
      return YAML.writeValueAsString(json(of(file)));
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
