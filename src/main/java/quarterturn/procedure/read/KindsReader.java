package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
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
  private static final String[] RODS = {Prior.BASS.word(), Prior.GUITAR.word(), "none"};

  private final Faults faults;
  private final Scalars values;
  private final Map<String, Kind> kinds = new LinkedHashMap<>();

  /** By the very piece that was read; which is why two pieces that say the same are two. */
  private final Map<Node, Window> ranges = new IdentityHashMap<>();

  /** The keys of every kind so far, with those of the kind that it is like. */
  private final Map<String, MappingKeys> read = new LinkedHashMap<>();

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
    MappingKeys fields = like(MappingKeys.of(item, "a kind", faults));
    Scalar id = values.id(fields.required("kind"), "a kind");
    String name = values.fixed(fields.required("name"));
    Length scale = scale(fields.required("scale"));
    Node courses = fields.required("strings");
    List<String> strings = strings(courses);
    Integer frets = values.count(fields.required("frets"), 1, MOST_FRETS);
    Integer joint = values.count(fields.required("joint-fret"), 1, MOST_FRETS);
    Integer readAt = values.count(fields.required("read-at"), 1, MOST_FRETS);
    order(fields, frets, joint, readAt);
    String rod = values.word(fields.required("rod"), "a kind of rod", RODS, word -> word);
    WindowsReader windows = new WindowsReader(fields, Kind.names(strings), ranges);
    windows.read();
    Make make = make(fields, strings, values.items(courses).size(), rod, windows.special());
    fields.end();
    if (id == null) {
      return;
    }
    read.put(id.text(), fields);
    if (kinds.containsKey(id.text())) {
      faults.twice(id, "the kind ", "Give each its own id");
    }
    if (name == null || scale == null || frets == null || joint == null || readAt == null) {
      return;
    }
    if (rod != null) {
      Prior prior = rod.equals(Prior.BASS.word()) ? Prior.BASS : Prior.GUITAR;
      kinds.put(
          id.text(),
          new Kind(
              id.text(),
              name,
              scale,
              strings,
              frets,
              joint,
              readAt,
              prior,
              windows.byStyle(),
              make));
    }
  }

  /** The keys of a kind; one that it lacks is that of the kind that it is like. */
  private MappingKeys like(MappingKeys fields) {
    Scalar like = values.scalar(fields.optional("like"));
    MappingKeys other = like == null ? null : read.get(like.text());
    if (like != null && other == null) {
      values.unknown(
          Slip.UNKNOWN_WORD, like, "a kind that stands above", List.copyOf(read.keySet()));
    }
    MappingKeys whole = other == null ? fields : fields.over(other);
    whole.optional("like");
    return whole;
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
    int first = 1;
    for (Node item : values.items(node)) {
      Scalar course = values.scalar(item);
      List<String> side = course == null ? List.of() : List.of(course.text().split(" +", -1));
      if (course != null && !notes.isEmpty() && side.size() != first) {
        faults.value(
            course.mark(),
            "a course with another number of strings: " + side.size() + ", not " + first,
            "Write as many in each");
      }
      first = notes.isEmpty() ? side.size() : first;
      for (String note : side) {
        if (NOTE.matcher(note).matches()) {
          notes.add(note);
        } else if (course != null) {
          faults.value(
              course.mark(),
              Quote.of(note) + " is no note",
              "Write its letter and octave, as in E1, A#2 or Bb0");
        }
      }
    }
    if (node instanceof Node.Sequence list && list.items().isEmpty()) {
      faults.value(list.mark(), "no string is named", "Name each of them, the lowest first");
    }
    return notes;
  }

  private Make make(
      MappingKeys fields,
      List<String> strings,
      int courses,
      @Nullable String rod,
      Map<Quantity, Map<String, Ends>> special) {
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
    // Until there was "bridge", "saddles" said whether they can be moved.
    Node saddles = fields.optional("saddles");
    Node named = fields.optional("bridge");
    BridgeKind bridge =
        values.word(named == null ? saddles : named, "a kind of bridge", BridgeKind.values());
    return new Make(
        radius,
        spread,
        gauges,
        bridge == null ? BridgeKind.ADJUSTABLE : bridge,
        scale(fields.optional("bass-scale")),
        Math.max(1, strings.size() / Math.max(1, courses)),
        values.truth(fields.optional("fretless")),
        !"none".equals(rod),
        values.truth(fields.optional("sound-hole")),
        special);
  }

  private @Nullable Length length(@Nullable Node node, String what, String example) {
    return values.parsed(node, text -> Amounts.length(text, what, example));
  }
}
