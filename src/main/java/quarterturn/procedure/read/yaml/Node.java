package quarterturn.procedure.read.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
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
    /** This list with other items; null leaves one out. */
    public Sequence each(Function<Node, @Nullable Node> written) {
      List<Node> all = new ArrayList<>();
      boolean same = true;
      for (Node item : items) {
        Node one = written.apply(item);
        same &= one == item;
        if (one != null) {
          all.add(one);
        }
      }
      return same ? this : new Sequence(all, mark);
    }

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

    /** The keys under a key; none where there are none. */
    public Mapping mapping(String key) {
      return value(key) instanceof Mapping mapping ? mapping : at(mark);
    }

    /** The items under a key; none where there are none. */
    public List<Node> items(String key) {
      return value(key) instanceof Sequence list ? list.items() : List.of();
    }

    /** A mapping with the same keys and other values; null leaves a key out. */
    public Mapping each(BiFunction<String, Node, @Nullable Node> written) {
      Map<String, Entry> all = new LinkedHashMap<>();
      boolean same = true;
      for (Map.Entry<String, Entry> one : entries.entrySet()) {
        Entry entry = one.getValue();
        Node value = written.apply(one.getKey(), entry.value());
        same &= value == entry.value();
        if (value != null) {
          all.put(one.getKey(), value == entry.value() ? entry : new Entry(entry.key(), value));
        }
      }
      return same ? this : new Mapping(all, mark);
    }

    /** The keys of both, {@code more} before this one; a key without a value is taken out. */
    public Mapping over(Mapping more) {
      Mapping both = this;
      for (Map.Entry<String, Entry> own : more.entries.entrySet()) {
        String key = own.getKey();
        Node now = own.getValue().value();
        Node joined =
            value(key) instanceof Mapping all && now instanceof Mapping one ? all.over(one) : now;
        both =
            now instanceof Scalar scalar && scalar.text().isEmpty()
                ? both.without(key)
                : both.with(key, new Entry(own.getValue().key(), joined));
      }
      return both;
    }

    /** A mapping without keys. */
    public static Mapping at(Mark mark) {
      return new Mapping(Map.of(), mark);
    }

    /** This mapping with another value of a key, or with a further key at the value's place. */
    public Mapping with(String key, Node value) {
      Entry before = entries.get(key);
      return with(key, new Entry(before == null ? value.mark() : before.key(), value));
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
