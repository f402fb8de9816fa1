package quarterturn.procedure.read.yaml;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;

/**
 * The keys of a mapping. What a reader asks for is what may stand there: {@link #end} notes every
 * other key, and every key that must stand there and does not. Of a piece that is no mapping every
 * value is null.
 */
public final class MappingKeys {
  private final @Nullable Node node;
  private final Map<String, Node.Entry> entries;
  private final String what;
  private final Faults faults;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> needed = new LinkedHashSet<>();

  private MappingKeys(
      @Nullable Node node, Map<String, Node.Entry> entries, String what, Faults faults) {
    this.node = node;
    this.entries = entries;
    this.what = what;
    this.faults = faults;
  }

  /**
   * The keys of {@code node}.
   *
   * @param what what it describes, with its article: "a measure step"
   */
  public static MappingKeys of(@Nullable Node node, String what, Faults faults) {
    Map<String, Node.Entry> entries =
        node instanceof Node.Mapping mapping ? mapping.entries() : Map.of();
    return new MappingKeys(node, entries, what, faults);
  }

  /** The keys of a whole file. */
  public static MappingKeys ofFile(Faults faults) throws UnreadableException {
    return of(faults.tree(), "this file", faults);
  }

  /**
   * The pieces of a file that is one list under one key.
   *
   * @throws UnreadableException when the file is no YAML or has no keys
   */
  public static List<Node> list(Faults faults, String key) throws UnreadableException {
    MappingKeys file = ofFile(faults);
    Node list = file.required(key);
    file.endFile();
    if (list instanceof Node.Sequence sequence && sequence.items().isEmpty()) {
      faults.value(list.mark(), "the list of " + key + " is empty", "Put one into it at least");
    }
    return new Scalars(faults).items(list);
  }

  /** Keys without values, which note those that a reader asks for. */
  public static MappingKeys empty() {
    Node none = new Node.Mapping(Map.of(), new Mark("", 1, 1));
    return of(none, "nothing", new Faults(Source.empty()));
  }

  /** These keys; one that is not there is looked for in {@code rest}. */
  public MappingKeys over(MappingKeys rest) {
    Map<String, Node.Entry> all = new LinkedHashMap<>(rest.entries);
    all.putAll(entries);
    return new MappingKeys(node, found() ? all : entries, what, faults);
  }

  public Faults faults() {
    return faults;
  }

  /** Whether the piece is a mapping. */
  public boolean found() {
    return node instanceof Node.Mapping;
  }

  /** Where the mapping stands. */
  public Mark mark() {
    return node == null ? faults.source().mark(0) : node.mark();
  }

  public boolean has(String key) {
    return entries.containsKey(key);
  }

  /** The place of a key, or of the mapping where the key is missing. */
  public Mark key(String key) {
    Node.Entry entry = entries.get(key);
    return entry == null ? mark() : entry.key();
  }

  /** The value of a key that may be there, or null. */
  public @Nullable Node optional(String key) {
    asked.add(key);
    Node.Entry entry = entries.get(key);
    return entry == null ? null : entry.value();
  }

  /** The value of a key that must be there, or null with a fault from {@link #end}. */
  public @Nullable Node required(String key) {
    needed.add(key);
    return optional(key);
  }

  /** The value of a key that must be there, or may. */
  public @Nullable Node value(String key, boolean must) {
    return must ? required(key) : optional(key);
  }

  /** The keys that were asked for, in order. */
  public List<String> asked() {
    return List.copyOf(asked);
  }

  /** The keys that were asked for and must be there. */
  public List<String> needed() {
    return List.copyOf(needed);
  }

  /**
   * Notes every key that was not asked for, and all required keys that are missing in one fault.
   */
  public void end() {
    if (!found()) {
      if (node != null && !(node instanceof Node.Refused)) {
        faults.value(
            node.mark(),
            "expected " + what + " here, found " + node.name(),
            "It is written as keys with values. Allowed: " + String.join(", ", asked));
      }
      return;
    }
    entries.forEach(
        (key, entry) -> {
          if (!asked.contains(key)) {
            faults.add(
                Slip.UNKNOWN_KEY,
                entry.key(),
                what + " has no key " + Quote.of(key),
                Quote.allowed(key, asked));
          }
        });
    List<String> missing = needed.stream().filter(key -> !has(key)).toList();
    if (!missing.isEmpty()) {
      boolean one = missing.size() == 1;
      faults.add(
          Slip.MISSING_KEY,
          mark(),
          what + " lacks the " + (one ? "key " : "keys ") + String.join(", ", missing),
          one ? "Add it" : "Add them");
    }
  }

  /**
   * Ends the reading of a whole file: every key that is unknown or lacking is a fault.
   *
   * @throws UnreadableException when it has no keys
   */
  public void endFile() throws UnreadableException {
    end();
    if (!found()) {
      throw new UnreadableException(faults.sorted());
    }
  }
}
