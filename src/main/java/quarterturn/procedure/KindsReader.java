package quarterturn.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Prior;
import quarterturn.craft.Window;
import quarterturn.procedure.Node.Scalar;
import quarterturn.unit.Length;

/** Reads the kinds of instrument from {@code procedures/kinds.yaml}. */
public final class KindsReader {
  private static final Pattern NOTE = Pattern.compile("[A-G][#b]?[0-8]");
  private static final int MOST_FRETS = 36;

  private final Faults faults;
  private final Scalars values;
  private final Map<String, Kind> kinds = new LinkedHashMap<>();

  private KindsReader(Faults faults) {
    this.faults = faults;
    this.values = new Scalars(faults);
  }

  /**
   * Reads kinds by id, in the file's order.
   *
   * @throws Unreadable with every fault of the file
   */
  public static Map<String, Kind> read(String fileName, byte[] bytes) throws Unreadable {
    Faults faults = new Faults(Source.of(fileName, bytes));
    Map<String, Kind> kinds = draft(faults);
    faults.check();
    return kinds;
  }

  /** Reads as much as can be read. */
  static Map<String, Kind> draft(Faults faults) throws Unreadable {
    KindsReader reader = new KindsReader(faults);
    Listed.items(faults, "kinds").forEach(reader::kind);
    return reader.kinds;
  }

  private void kind(Node item) {
    List<String> keys =
        List.of(
            "kind", "name", "scale", "strings", "frets", "joint-fret", "read-at", "rod", "relief");
    Fields fields = Fields.of(item, "a kind", keys, faults);
    if (fields == null) {
      return;
    }
    Scalar id = values.id(fields.required("kind"), "a kind");
    String name = values.fixed(fields.required("name"));
    Length scale = scale(fields.required("scale"));
    List<String> strings = strings(fields.required("strings"));
    Integer frets = values.count(fields.required("frets"), 1, MOST_FRETS);
    Integer joint = values.count(fields.required("joint-fret"), 1, MOST_FRETS);
    Integer readAt = values.count(fields.required("read-at"), 1, MOST_FRETS);
    order(fields, frets, joint, readAt);
    Prior prior = values.word(fields.required("rod"), "a kind of rod", Prior.values(), Prior::word);
    Map<Style, Kind.Target> relief = relief(fields.required("relief"));
    fields.end();
    if (id == null) {
      return;
    }
    if (kinds.containsKey(id.text())) {
      faults.add(id.mark(), "the kind " + Quote.of(id.text()) + " stands here a second time");
    }
    if (name == null || scale == null || frets == null || joint == null || readAt == null) {
      return;
    }
    if (prior != null) {
      kinds.put(
          id.text(),
          new Kind(id.text(), name, scale, strings, frets, joint, readAt, prior, relief));
    }
  }

  /** The reading is taken between fret 1 and the joint fret, which is one of the frets. */
  private void order(
      Fields fields, @Nullable Integer frets, @Nullable Integer joint, @Nullable Integer readAt) {
    if (frets != null && joint != null && joint > frets) {
      faults.add(
          fields.key("joint-fret"), "the joint fret is " + joint + " of only " + frets + " frets");
    }
    if (readAt != null && readAt <= 1) {
      faults.add(
          fields.key("read-at"), "relief is read beyond fret 1, which is held; write 2 or more");
    } else if (readAt != null && joint != null && readAt >= joint) {
      faults.add(
          fields.key("read-at"),
          "relief is read before the joint fret, which is held; write less than " + joint);
    }
  }

  private @Nullable Length scale(@Nullable Node node) {
    Length scale = values.parsed(node, text -> Amounts.length(text, "scale length", "34 in"));
    if (node != null && scale != null && !(scale.mm() >= 200 && scale.mm() <= 1500)) {
      faults.add(node.mark(), "a scale length lies between 200 mm and 1500 mm");
      return null;
    }
    return scale;
  }

  private List<String> strings(@Nullable Node node) {
    List<String> notes = new ArrayList<>();
    for (Node item : values.items(node)) {
      Scalar note = values.scalar(item);
      if (note != null && !NOTE.matcher(note.text()).matches()) {
        faults.add(
            note.mark(),
            Quote.of(note.text())
                + " is no note; write its letter and octave, as in E1, A#2 or Bb0");
      } else if (note != null) {
        notes.add(note.text());
      }
    }
    if (node instanceof Node.Sequence list && list.items().isEmpty()) {
      faults.add(list.mark(), "name each string, the lowest first");
    }
    return notes;
  }

  private Map<Style, Kind.Target> relief(@Nullable Node node) {
    Map<Style, Kind.Target> targets = new EnumMap<>(Style.class);
    List<String> styles = Arrays.stream(Style.values()).map(Style::word).toList();
    Fields fields = Fields.of(node, "relief", styles, faults);
    if (fields == null) {
      return targets;
    }
    for (Style style : Style.values()) {
      Fields target =
          Fields.of(fields.required(style.word()), "a window", List.of("window", "source"), faults);
      if (target == null) {
        continue;
      }
      Amounts.Range range =
          values.parsed(target.required("window"), text -> Amounts.range(Quantity.RELIEF, text));
      String source = values.fixed(target.required("source"));
      target.end();
      if (range != null && source != null) {
        targets.put(style, new Kind.Target(new Window(range.least(), range.most()), source));
      }
    }
    fields.end();
    return targets;
  }
}
