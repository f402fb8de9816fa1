package quarterturn.procedure.read;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.Worded;

/**
 * Reads the windows of one kind: for each quantity one for every style, or one for each, and one
 * for what an instrument can have in place of what is usual.
 */
final class WindowsReader {
  private static final String EVERY = "every";

  private final MappingKeys kind;
  private final Scalars values;
  private final List<String> strings;
  private final Map<Node, Window> read;
  private final Map<Quantity, Map<Style, Ends>> byStyle = new EnumMap<>(Quantity.class);
  private final Map<Quantity, Map<String, Ends>> special = new EnumMap<>(Quantity.class);

  /**
   * @param kind the keys of the kind
   * @param strings names of its strings
   * @param read the windows of all kinds so far, by the very piece that each was read from: a kind
   *     that is like another has its pieces
   */
  WindowsReader(MappingKeys kind, List<String> strings, Map<Node, Window> read) {
    this.kind = kind;
    this.read = read;
    this.values = new Scalars(kind.faults());
    this.strings = strings;
  }

  Map<Quantity, Map<Style, Ends>> byStyle() {
    return byStyle;
  }

  /** Windows for a nut, a pickup or a bridge of another kind, by its word. */
  Map<Quantity, Map<String, Ends>> special() {
    return special;
  }

  void read() {
    Node relief = kind.required(Quantity.RELIEF.word());
    boolean slide = MappingKeys.of(relief, "", kind.faults()).has(Style.SLIDE.word());
    for (Quantity quantity : Quantity.values()) {
      Node node = quantity.onString() && !quantity.ofPart() ? kind.optional(quantity.word()) : null;
      if (node != null || quantity == Quantity.RELIEF) {
        windows(MappingKeys.of(node, quantity.word(), kind.faults()), quantity, slide);
      }
    }
  }

  /** The windows of one quantity; where relief has one for a slide, so has every quantity. */
  private void windows(MappingKeys fields, Quantity quantity, boolean slide) {
    Map<Style, Ends> styles = new EnumMap<>(Style.class);
    boolean every = quantity != Quantity.RELIEF && fields.has(EVERY);
    Ends all = every ? ends(fields.required(EVERY), quantity) : null;
    for (Style style : Style.values()) {
      boolean has = style != Style.SLIDE || slide;
      Node node = fields.value(style.word(), has && !every);
      Ends ends = every ? all : ends(node, quantity);
      if (has && ends != null) {
        styles.put(style, ends);
      }
    }
    byStyle.put(quantity, styles);
    Map<String, Ends> others = new HashMap<>();
    for (String word : others(quantity)) {
      Node node = fields.optional(word);
      Ends ends = node == null ? null : ends(node, quantity);
      if (ends != null) {
        others.put(word, ends);
      }
    }
    special.put(quantity, others);
    fields.end();
  }

  /** What an instrument can have that has a window of its own. */
  private static List<String> others(Quantity quantity) {
    return switch (quantity) {
      case NUT_CLEARANCE -> Worded.words(NutKind.values());
      case INTONATION -> Worded.words(BridgeKind.values());
      case PICKUP_GAP -> Worded.words(PickupKind.values());
      case RELIEF,
          BOW_NUT_END,
          BOW_MIDDLE,
          BOW_JOINT,
          BOW_BODY_END,
          ACTION,
          HUMIDITY,
          TEMPERATURE ->
          List.of();
    };
  }

  /** A window for all strings or for the two outer ones, and for single strings. */
  private @Nullable Ends ends(@Nullable Node node, Quantity quantity) {
    MappingKeys target = MappingKeys.of(node, "a range", kind.faults());
    boolean outer = target.has("low") || target.has("high");
    Node all = target.value("window", !outer);
    Node lowest = target.value("low", outer);
    Window low = window(outer ? lowest : all, quantity);
    Node highest = target.value("high", outer);
    Window high = outer ? window(highest, quantity) : low;
    Map<Integer, Window> own = single(target.optional("strings"), quantity);
    String source = values.fixed(target.required("source"));
    target.end();
    return low == null || high == null || source == null ? null : new Ends(low, high, own, source);
  }

  private Map<Integer, Window> single(@Nullable Node node, Quantity quantity) {
    Map<Integer, Window> own = new HashMap<>();
    MappingKeys fields = MappingKeys.of(node, "a list of ranges for strings", kind.faults());
    for (int i = 0; i < strings.size(); i++) {
      Window window = window(fields.optional(strings.get(i)), quantity);
      if (window != null) {
        own.put(i, window);
      }
    }
    fields.end();
    return own;
  }

  private @Nullable Window window(@Nullable Node node, Quantity quantity) {
    Window window = read.get(node);
    if (window == null) {
      window =
          values.parsed(
              node,
              text -> {
                Amounts.Range range = Amounts.range(quantity, text);
                return BoundsReader.of(quantity).window(new Window(range.least(), range.most()));
              });
      if (node != null && window != null) {
        read.put(node, window);
      }
    }
    return window;
  }
}
