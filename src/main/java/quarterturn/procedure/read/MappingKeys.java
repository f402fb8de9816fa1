package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Quote;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;

/** The keys of a mapping against those that are allowed there. */
final class MappingKeys {
  private final Node.Mapping mapping;
  private final String what;
  private final Faults faults;
  private final List<String> missing = new ArrayList<>();

  private MappingKeys(Node.Mapping mapping, String what, Faults faults) {
    this.mapping = mapping;
    this.what = what;
    this.faults = faults;
  }

  /**
   * The fields of {@code node}, or null with a fault where it is no mapping. Every key beside
   * {@code allowed} is a fault.
   *
   * @param what what it describes, with its article: "a measure step"
   */
  static @Nullable MappingKeys of(
      @Nullable Node node, String what, List<String> allowed, Faults faults) {
    if (!(node instanceof Node.Mapping mapping)) {
      if (node != null && !(node instanceof Node.Refused)) {
        faults.value(
            node.mark(),
            "expected " + what + " here, found " + node.name(),
            "It is written as keys with values. Allowed: " + String.join(", ", allowed));
      }
      return null;
    }
    mapping
        .entries()
        .forEach(
            (key, entry) -> {
              if (!allowed.contains(key)) {
                faults.add(
                    Slip.UNKNOWN_KEY,
                    entry.key(),
                    what + " has no key " + Quote.of(key),
                    Quote.allowed(key, allowed));
              }
            });
    return new MappingKeys(mapping, what, faults);
  }

  /**
   * The fields of a whole file.
   *
   * @throws UnreadableException when it has none
   */
  static MappingKeys ofFile(Faults faults, List<String> allowed) throws UnreadableException {
    MappingKeys fields = of(TreeReader.read(faults), "this file", allowed, faults);
    if (fields == null) {
      throw new UnreadableException(faults.sorted());
    }
    return fields;
  }

  /** The same, with what is left out as in {@code rest}. */
  MappingKeys over(MappingKeys rest) {
    Map<String, Node.Entry> all = new LinkedHashMap<>(rest.mapping.entries());
    all.putAll(mapping.entries());
    return new MappingKeys(new Node.Mapping(all, mapping.mark()), what, faults);
  }

  Mark mark() {
    return mapping.mark();
  }

  boolean has(String key) {
    return mapping.entries().containsKey(key);
  }

  /** Where the key stands, or the mapping where it does not. */
  Mark key(String key) {
    Node.Entry entry = mapping.entries().get(key);
    return entry == null ? mapping.mark() : entry.key();
  }

  /** The value, or null where there is none. */
  @Nullable Node optional(String key) {
    Node.Entry entry = mapping.entries().get(key);
    return entry == null ? null : entry.value();
  }

  /** The value, or null where there is none, which {@link #end} will say. */
  @Nullable Node required(String key) {
    if (!has(key)) {
      missing.add(key);
    }
    return optional(key);
  }

  /** Notes every required key that was missing, all in one fault. */
  void end() {
    if (!missing.isEmpty()) {
      boolean one = missing.size() == 1;
      faults.add(
          Slip.MISSING_KEY,
          mapping.mark(),
          what + " lacks the " + (one ? "key " : "keys ") + String.join(", ", missing),
          one ? "Add it" : "Add them");
    }
  }
}
