package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Gives the steps of a block other ids, in all that names them.
 *
 * @param ids finds an id by itself, behind an arrow, or in a condition
 * @param names the new ids by the old ones
 */
record Renaming(Pattern ids, Map<String, String> names) {
  /** The keys whose values name no step. */
  private static final Set<String> OTHER =
      Set.of(
          "use",
          "read",
          "quantity",
          "text",
          "brief",
          "why",
          "ask",
          "establishes",
          "hazards",
          "changes",
          "picture");

  /** The steps with the ids that {@code names} has for theirs. */
  static List<Node> of(Map<String, String> names, List<Node> steps) {
    Map<String, String> other = new LinkedHashMap<>(names);
    other.entrySet().removeIf(name -> name.getKey().equals(name.getValue()));
    if (other.isEmpty()) {
      return steps;
    }
    String any = other.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|"));
    String alone = "(?:^|(?<= -> ))(?:" + any + ")$";
    String inCondition = "(?<![a-z0-9-])(?:" + any + ")(?= (?:is|reached) )";
    return new Renaming(Pattern.compile(alone + "|" + inCondition), other).all(steps);
  }

  private List<Node> all(List<Node> pieces) {
    List<Node> renamed = new ArrayList<>(pieces);
    renamed.replaceAll(this::one);
    return renamed;
  }

  private Node one(Node node) {
    if (node instanceof Scalar scalar) {
      String text = one(scalar.text());
      return text.equals(scalar.text()) ? scalar : Scalar.at(scalar.mark(), text);
    }
    if (node instanceof Sequence list) {
      return new Sequence(all(list.items()), list.mark());
    }
    if (node instanceof Mapping mapping) {
      Map<String, Entry> all = new LinkedHashMap<>();
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                Node value = OTHER.contains(key) ? entry.value() : one(entry.value());
                all.put(key.contains(" ") ? one(key) : key, new Entry(entry.key(), value));
              });
      return new Mapping(all, mapping.mark());
    }
    return node;
  }

  private String one(String text) {
    return ids.matcher(text).replaceAll(found -> names.getOrDefault(found.group(), found.group()));
  }
}
