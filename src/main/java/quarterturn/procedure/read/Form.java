package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.Source;

/**
 * The keys of a file, or of a piece of one, for readers in other packages. Each asks for the keys
 * it needs; every fault is noted with its line and column, and {@link #end} throws them all at
 * once. A wrong or missing value reads as null.
 */
public final class Form {
  private final Faults faults;
  private final Scalars values;
  private final MappingKeys fields;

  private Form(Faults faults, MappingKeys fields) {
    this.faults = faults;
    this.values = new Scalars(faults);
    this.fields = fields;
  }

  /**
   * The keys of a file.
   *
   * @param allowed every key that may stand in it
   * @throws UnreadableException where it is no YAML with keys
   */
  public static Form of(String fileName, byte[] bytes, List<String> allowed)
      throws UnreadableException {
    Faults faults = new Faults(Source.of(fileName, bytes));
    MappingKeys fields = MappingKeys.ofFile(faults);
    allowed.forEach(fields::optional);
    if (!fields.found()) {
      fields.endFile();
    }
    return new Form(faults, fields);
  }

  public boolean has(String key) {
    return fields.has(key);
  }

  /** The text of a key that must be there, one line. */
  public @Nullable String line(String key) {
    return values.fixed(fields.required(key));
  }

  /** The text of a key that may be there, one line. */
  public @Nullable String lineOrNull(String key) {
    return values.fixed(fields.optional(key));
  }

  /** The id under a key that must be there. */
  public @Nullable String id(String key, String what) {
    Scalar id = values.id(fields.required(key), what);
    return id == null ? null : id.text();
  }

  /** The ids in a list that must be there, each once. */
  public List<String> ids(String key, String what) {
    List<String> ids = new ArrayList<>();
    for (Node item : values.items(fields.required(key))) {
      Scalar id = values.id(item, what);
      if (id != null && ids.contains(id.text())) {
        faults.twice(id, "", "Name each one once");
      } else if (id != null) {
        ids.add(id.text());
      }
    }
    return ids;
  }

  /** The lines of text in a list that may be there. */
  public List<String> lines(String key) {
    return values.fixedLines(fields.optional(key));
  }

  /** The whole number under a key that may be there. */
  public @Nullable Integer countOrNull(String key, int least, int most) {
    return values.count(fields.optional(key), least, most);
  }

  /** The one of {@code all} whose word stands under a key that must be there. */
  public <T> @Nullable T word(String key, String what, T[] all, Function<T, String> word) {
    return values.word(fields.required(key), what, all, word);
  }

  /** The one of {@code all} whose word stands under a key that may be there. */
  public <T> @Nullable T wordOrNull(String key, String what, T[] all, Function<T, String> word) {
    return values.word(fields.optional(key), what, all, word);
  }

  /** {@code true} or {@code false}; false where it is not there. */
  public boolean truth(String key) {
    return fields.has(key) && values.truth(fields.optional(key));
  }

  /** The pieces of a list that may be there, each with keys of its own. */
  public List<Form> each(String key, String what, List<String> allowed) {
    List<Form> out = new ArrayList<>();
    for (Node item : values.items(fields.optional(key))) {
      MappingKeys piece = MappingKeys.of(item, what, faults);
      allowed.forEach(piece::optional);
      if (piece.found()) {
        out.add(new Form(faults, piece));
      } else {
        piece.end();
      }
    }
    return out;
  }

  /** Notes that the value of a key is wrong. */
  public void wrong(String key, String wrong, String mend) {
    Node value = fields.optional(key);
    faults.value(value == null ? fields.key(key) : value.mark(), wrong, mend);
  }

  /** Notes the keys of this piece that are missing; asks for nothing after it. */
  public void complete() {
    fields.end();
  }

  /**
   * Ends the reading of the whole file.
   *
   * @throws UnreadableException with every fault of it
   */
  public void end() throws UnreadableException {
    fields.end();
    faults.check();
  }
}
