package quarterturn.reference;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One entry of the reference values. Used in try-with-resources, closing fails unless every value
 * under {@code expected} was read, so that none is forgotten.
 */
public final class Reference implements AutoCloseable {
  private static final Path FOLDER = Path.of("src/test/resources/quarterturn/reference");

  private final JsonNode entry;
  private final Set<String> read = new HashSet<>();

  private Reference(JsonNode entry) {
    this.entry = entry;
  }

  /** The entry of this id. */
  public static Reference of(String id) {
    Map<String, JsonNode> all = all();
    JsonNode entry = all.get(id);
    if (entry == null) {
      throw new AssertionError("no reference " + id + "; there are " + all.keySet());
    }
    return new Reference(entry);
  }

  /** Every id, in the order of the files. */
  static List<String> ids() {
    return List.copyOf(all().keySet());
  }

  private static Map<String, JsonNode> all() {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.sorted().toList()) {
        for (JsonNode entry : new YAMLMapper().readTree(Files.readString(file))) {
          String id = entry.get("id").textValue();
          if (all.put(id, entry) != null) {
            throw new AssertionError("two references " + id);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  /** The inputs that the expected values hold for. */
  public Value inputs() {
    return new Value(entry.get("inputs"), "inputs", read);
  }

  /** The expected values. */
  public Value expected() {
    return new Value(entry.get("expected"), "expected", read);
  }

  /** A tolerance by its name, such as {@code abs_mm} or {@code rel}. */
  public double tolerance(String name) {
    return new Value(entry.get("tolerance"), "tolerance", read).number(name);
  }

  /** "estimate; beam estimate": the status and the source, for messages. */
  public String because() {
    return entry.get("id").textValue()
        + " ("
        + entry.get("status").textValue()
        + "): "
        + entry.get("source").textValue();
  }

  @Override
  public void close() {
    List<String> forgotten =
        expected().leaves().stream().filter(leaf -> !read.contains(leaf)).toList();
    if (!forgotten.isEmpty()) {
      throw new AssertionError(
          entry.get("id").textValue() + " has values that nothing was held to: " + forgotten);
    }
  }
}
