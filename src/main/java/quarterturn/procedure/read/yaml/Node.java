package quarterturn.procedure.read.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;

/** A piece of a file with its place. */
public sealed interface Node {
  Mark mark();

  /** The kind of piece, as a message calls it. */
  String name();

  /**
   * A single value.
   *
   * @param text as written, without quotes and without blank space at its ends
   * @param raw the text as it stands in the file
   */
  record Scalar(String text, String raw, Mark mark) implements Node {
    /** A value that stands in no file, at the place of what it belongs to. */
    public static Scalar at(Mark mark, String text) {
      return new Scalar(text, text, mark);
    }

    @Override
    public String name() {
      return text.isEmpty() ? "nothing" : "a single value";
    }
  }

  /** A list. */
  record Sequence(List<Node> items, Mark mark) implements Node {
    @Override
    public String name() {
      return "a list";
    }
  }

  /** Keys with their values, in the file's order. */
  record Mapping(Map<String, Entry> entries, Mark mark) implements Node {
    /** The first key, which names the kind of a step; nothing where there is none. */
    public String first() {
      return entries.keySet().stream().findFirst().orElse("");
    }

    /** The value of a key, or null where it is not there. */
    public @Nullable Node value(String key) {
      Entry entry = entries.get(key);
      return entry == null ? null : entry.value();
    }

    /** The single value of a key, or nothing where it has none. */
    public String text(String key) {
      return value(key) instanceof Scalar scalar ? scalar.text() : "";
    }

    /** This mapping with another value of a key, or with a further key at its end. */
    public Mapping with(String key, Entry value) {
      Map<String, Entry> all = new LinkedHashMap<>(entries);
      all.put(key, value);
      return new Mapping(all, mark);
    }

    public Mapping without(String key) {
      Map<String, Entry> all = new LinkedHashMap<>(entries);
      all.remove(key);
      return new Mapping(all, mark);
    }

    @Override
    public String name() {
      return "keys with values";
    }
  }

  /** A value of a mapping and where its key stands. */
  record Entry(Mark key, Node value) {}

  /** A piece already refused with a fault of its own, so that nothing more is said about it. */
  record Refused(Mark mark) implements Node {
    @Override
    public String name() {
      return "a refused value";
    }
  }
}
