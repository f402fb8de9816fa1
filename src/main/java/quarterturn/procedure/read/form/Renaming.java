package quarterturn.procedure.read.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Gives the steps of a block other ids, in all that names them.
 *
 * @param names the new ids by the old ones
 */
record Renaming(Map<String, String> names) {
  /** Finds an id by itself, behind an arrow, or in a condition. */
  private static final Pattern IDS =
      Pattern.compile(
          "(?:^|(?<=->)|(?<=-> ))[a-z0-9-]++$|(?<![a-z0-9-])[a-z0-9-]++(?= (?:is|reached) )");

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
          "picture",
          "records",
          "short");

  /** The steps with the ids that {@code names} has for theirs. */
  static List<Node> of(Map<String, String> names, List<Node> steps) {
    Map<String, String> other = new LinkedHashMap<>(names);
    other.entrySet().removeIf(name -> name.getKey().equals(name.getValue()));
    Renaming renaming = new Renaming(other);
    return other.isEmpty() ? steps : steps.stream().map(renaming::one).toList();
  }

  private Node one(Node node) {
    if (node instanceof Scalar scalar) {
      String text = one(scalar.text());
      return text.equals(scalar.text()) ? scalar : Scalar.at(scalar.mark(), text);
    }
    if (node instanceof Sequence list) {
      return list.each(this::one);
    }
    if (!(node instanceof Mapping mapping)) {
      return node;
    }
    Mapping renamed = mapping.each((key, value) -> OTHER.contains(key) ? value : one(value));
    if (renamed.first().indexOf(' ') < 0) {
      return renamed;
    }
    Map<String, Entry> all = new LinkedHashMap<>();
    renamed.entries().forEach((key, value) -> all.put(key.contains(" ") ? one(key) : key, value));
    return new Mapping(all, mapping.mark());
  }

  private String one(String text) {
    if (text.indexOf(' ') < 0) {
      return names.getOrDefault(text, text);
    }
    return IDS.matcher(text).replaceAll(found -> names.getOrDefault(found.group(), found.group()));
  }
}
