package quarterturn.reference;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A part of a reference entry, which remembers what of it was read. */
public final class Value {
  private final JsonNode node;
  private final String path;
  private final Set<String> read;

  Value(JsonNode node, String path, Set<String> read) {
    this.node = node;
    this.path = path;
    this.read = read;
  }

  /** The keys of a map, in order. */
  public List<String> keys() {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /** Whether there is such a key. */
  public boolean has(String key) {
    return node.has(key);
  }

  /** What stands under a key. */
  public Value at(String key) {
    JsonNode below = node.get(key);
    if (below == null) {
      throw new AssertionError("no " + path + "/" + key + "; there are " + keys());
    }
    return new Value(below, path + "/" + key, read);
  }

  /** The items of a list. */
  public List<Value> items() {
    List<Value> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(new Value(node.get(i), path + "/" + i, read));
    }
    return items;
  }

  /** The number that this value is; anything else fails. */
  public double number() {
    if (!node.isNumber()) {
      throw new AssertionError(path + " is no number: " + node);
    }
    read.add(path);
    return node.doubleValue();
  }

  /** The number under a key. */
  public double number(String key) {
    return at(key).number();
  }

  /** The numbers of the list under a key. */
  public double[] numbers(String key) {
    return at(key).items().stream().mapToDouble(Value::number).toArray();
  }

  /** The value as text, whatever it is. */
  public String text() {
    read.add(path);
    return node.asText();
  }

  /** The text under a key. */
  public String text(String key) {
    return at(key).text();
  }

  /** Whether this is null, which then counts as read. */
  public boolean isNull() {
    if (node.isNull()) {
      read.add(path);
    }
    return node.isNull();
  }

  /** Whether this is a number, and no text or null. */
  public boolean isNumber() {
    return node.isNumber();
  }

  List<String> leaves() {
    List<String> leaves = new ArrayList<>();
    gather(node, path, leaves);
    return leaves;
  }

  private static void gather(JsonNode node, String path, List<String> leaves) {
    if (node.isObject()) {
      node.properties().forEach(f -> gather(f.getValue(), path + "/" + f.getKey(), leaves));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        gather(node.get(i), path + "/" + i, leaves);
      }
    } else {
      leaves.add(path);
    }
  }
}
