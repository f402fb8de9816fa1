package quarterturn.procedure.read.form;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Fills what a sheet says into a block. {@code <string>} stands for the value of {@code string}; a
 * key or an item that is nothing else is left out where there is no such value.
 */
record Template(Function<String, @Nullable Node> values) {
  private static final Pattern NAMED = Pattern.compile("<([a-z][a-z-]*)>");

  /** The names that a block asks for. */
  static Set<String> names(Node block) {
    Set<String> names = new HashSet<>();
    Function<String, @Nullable Node> note =
        name -> {
          names.add(name);
          return null;
        };
    new Template(note).fill(block);
    return names;
  }

  /** The piece with its values; null where it is left out. */
  @Nullable Node fill(Node node) {
    if (node instanceof Scalar scalar) {
      if (scalar.text().indexOf('<') < 0) {
        return scalar;
      }
      Matcher whole = NAMED.matcher(scalar.text());
      return whole.matches()
          ? values.apply(whole.group(1))
          : Scalar.at(scalar.mark(), filled(scalar.text()));
    }
    if (node instanceof Sequence list) {
      return list.each(this::fill);
    }
    if (!(node instanceof Mapping mapping)) {
      return node;
    }
    Mapping filled = mapping.each((key, value) -> fill(value));
    if (filled.entries().keySet().stream().noneMatch(key -> key.indexOf('<') >= 0)) {
      return filled;
    }
    Map<String, Entry> all = new LinkedHashMap<>();
    filled.entries().forEach((key, value) -> all.put(filled(key), value));
    return new Mapping(all, mapping.mark());
  }

  private String filled(String text) {
    return NAMED
        .matcher(text)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    values.apply(found.group(1)) instanceof Scalar value
                        ? value.text()
                        : found.group()));
  }
}
