package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.Length;

/** Reads the kinds of instrument from {@code procedures/kinds.yaml}. */
final class KindsReader {
  private static final Pattern NOTE = Pattern.compile("[A-G][#b]?[0-8]");
  private static final int MOST_FRETS = 36;

  private final Faults faults;
  private final Scalars values;
  private final Map<String, Kind> kinds = new LinkedHashMap<>();

  private KindsReader(Faults faults) {
    this.faults = faults;
    this.values = new Scalars(faults);
  }

  /** Reads the kinds as far as they can be read. */
  static Map<String, Kind> draft(Faults faults) throws UnreadableException {
    KindsReader reader = new KindsReader(faults);
    MappingKeys.list(faults, "kinds").forEach(reader::kind);
    return reader.kinds;
  }

  private void kind(Node item) {
    MappingKeys fields = MappingKeys.of(item, "a kind", faults);
    Scalar id = values.id(fields.required("kind"), "a kind");
    String name = values.fixed(fields.required("name"));
    Length scale = scale(fields.required("scale"));
    List<String> strings = strings(fields.required("strings"));
    Integer frets = values.count(fields.required("frets"), 1, MOST_FRETS);
    Integer joint = values.count(fields.required("joint-fret"), 1, MOST_FRETS);
    Integer readAt = values.count(fields.required("read-at"), 1, MOST_FRETS);
    order(fields, frets, joint, readAt);
    Prior prior = values.word(fields.required("rod"), "a kind of rod", Prior.values());
    Make make = make(fields, strings);
    Map<Quantity, Map<Style, Ends>> windows = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      if (quantity.onString()) {
        Node node = fields.value(quantity.word(), quantity == Quantity.RELIEF);
        if (node != null || quantity == Quantity.RELIEF) {
          windows.put(quantity, windows(node, quantity));
        }
      }
    }
    fields.end();
    if (id == null) {
      return;
    }
    if (kinds.containsKey(id.text())) {
      faults.twice(id, "the kind ", "Give each its own id");
    }
    if (name == null || scale == null || frets == null || joint == null || readAt == null) {
      return;
    }
    if (prior != null) {
      kinds.put(
          id.text(),
          new Kind(id.text(), name, scale, strings, frets, joint, readAt, prior, windows, make));
    }
  }

  /**
   * Checks that the reading is taken between fret 1 and the joint fret, which is one of the frets.
   */
  private void order(
      MappingKeys fields,
      @Nullable Integer frets,
      @Nullable Integer joint,
      @Nullable Integer readAt) {
    if (frets != null && joint != null && joint > frets) {
      faults.value(
          fields.key("joint-fret"),
          "the joint fret is " + joint + " of only " + frets + " frets",
          "Write " + frets + " at most");
    }
    if (readAt != null && readAt <= 1) {
      faults.value(
          fields.key("read-at"), "relief is read beyond fret 1, which is held", "Write 2 or more");
    } else if (readAt != null && joint != null && readAt >= joint) {
      faults.value(
          fields.key("read-at"),
          "relief is read before the joint fret, which is held",
          "Write less than " + joint);
    }
  }

  private @Nullable Length scale(@Nullable Node node) {
    Length scale = values.parsed(node, text -> Amounts.length(text, "scale length", "34 in"));
    if (node != null && scale != null && !(scale.mm() >= 200 && scale.mm() <= 1500)) {
      faults.value(
          node.mark(),
          "no instrument has a scale length of " + scale,
          "Write one between 200 mm and 1500 mm");
      return null;
    }
    return scale;
  }

  private List<String> strings(@Nullable Node node) {
    List<String> notes = new ArrayList<>();
    for (Node item : values.items(node)) {
      Scalar note = values.scalar(item);
      if (note != null && !NOTE.matcher(note.text()).matches()) {
        faults.value(
            note.mark(),
            Quote.of(note.text()) + " is no note",
            "Write its letter and octave, as in E1, A#2 or Bb0");
      } else if (note != null) {
        notes.add(note.text());
      }
    }
    if (node instanceof Node.Sequence list && list.items().isEmpty()) {
      faults.value(list.mark(), "no string is named", "Name each of them, the lowest first");
    }
    return notes;
  }

  private Make make(MappingKeys fields, List<String> strings) {
    Length radius = length(fields.optional("radius"), "a radius", "241 mm");
    Length spread = length(fields.optional("spread"), "a spread", "57 mm");
    Node list = fields.optional("gauges");
    List<Length> gauges = values.each(list, item -> length(item, "a string's diameter", ".105 in"));
    if (list != null && gauges.size() != strings.size()) {
      faults.value(
          list.mark(),
          gauges.size() + " gauges for " + strings.size() + " strings",
          "Write as many gauges as strings");
    }
    Make.Saddles saddles =
        values.word(fields.optional("saddles"), "a kind of saddles", Make.Saddles.values());
    return new Make(radius, spread, gauges, saddles == null ? Make.Saddles.ADJUSTABLE : saddles);
  }

  private @Nullable Length length(@Nullable Node node, String what, String example) {
    return values.parsed(node, text -> Amounts.length(text, what, example));
  }

  /** A window for every style, each for all strings or for the two outer ones. */
  private Map<Style, Ends> windows(@Nullable Node node, Quantity quantity) {
    Map<Style, Ends> targets = new EnumMap<>(Style.class);
    MappingKeys fields = MappingKeys.of(node, quantity.word(), faults);
    for (Style style : Style.values()) {
      MappingKeys target = MappingKeys.of(fields.required(style.word()), "a window", faults);
      boolean ends = target.has("low") || target.has("high");
      Node all = target.value("window", !ends);
      Node lowest = target.value("low", ends);
      Window low = window(ends ? lowest : all, quantity);
      Node highest = target.value("high", ends);
      Window high = ends ? window(highest, quantity) : low;
      String source = values.fixed(target.required("source"));
      target.end();
      if (low != null && high != null && source != null) {
        targets.put(style, new Ends(low, high, source));
      }
    }
    fields.end();
    return targets;
  }

  private @Nullable Window window(@Nullable Node node, Quantity quantity) {
    return values.parsed(
        node,
        text -> {
          Amounts.Range range = Amounts.range(quantity, text);
          return BoundsReader.of(quantity).window(new Window(range.least(), range.most()));
        });
  }
}
