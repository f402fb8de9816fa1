package quarterturn.session;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Radius;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Length;
import quarterturn.unit.Worded;

/** Lays an instrument's own facts over those of its kind. */
public final class OwnMake {
  private static final String SOURCE = "this instrument's own range";

  private OwnMake() {}

  /** The facts in an instrument's file that replace its kind's, or null where there are none. */
  public static Event.@Nullable Own of(Instrument instrument) {
    Instrument.Build build = instrument.build();
    Length scale = build.scale();
    Radius radius = build.radius();
    boolean flat = radius == null || Double.isInfinite(radius.mm());
    List<String> tuning = build.tuning() == null ? List.of() : notes(build.tuning());
    List<Double> gauges = build.gauges() == null ? List.of() : mm(build.gauges());
    BridgeKind bridge = build.bridge();
    boolean none =
        scale == null
            && radius == null
            && tuning.isEmpty()
            && gauges.isEmpty()
            && bridge == null
            && build.nut() == null
            && build.pickup() == null
            && build.rod() == null
            && instrument.windows().isEmpty();
    return none
        ? null
        : new Event.Own(
            scale == null ? null : Double.valueOf(scale.mm()),
            tuning,
            gauges,
            flat || radius == null ? null : Double.valueOf(radius.mm()),
            bridge == BridgeKind.FIXED,
            instrument.windows(),
            build.nut(),
            bridge,
            build.pickup(),
            build.rod());
  }

  private static List<String> notes(List<?> notes) {
    return notes.stream().map(String::valueOf).toList();
  }

  private static List<Double> mm(List<Length> lengths) {
    return lengths.stream().map(Length::mm).toList();
  }

  /** The kind with an instrument's own facts in place of the kind's. */
  public static Kind of(Kind kind, Event.Own own) {
    int strings = own.tuning().isEmpty() ? kind.strings().size() : own.tuning().size();
    Make make = kind.make();
    List<Length> gauges =
        own.gaugesMm().isEmpty() ? make.gauges() : own.gaugesMm().stream().map(Length::mm).toList();
    // Sessions of earlier versions say only whether the saddles are fixed.
    BridgeKind bridge = own.fixedSaddles() ? BridgeKind.FIXED : own.bridge();
    Make made =
        new Make(
            own.radiusMm() == null ? make.radius() : Length.mm(own.radiusMm()),
            make.spread(),
            gauges.size() == strings ? gauges : List.of(),
            bridge == null ? make.bridge() : bridge,
            make.bassScale(),
            strings == kind.strings().size() ? make.course() : 1,
            make.fretless(),
            make.rod(),
            make.soundHole(),
            make.special());
    return new Kind(
        kind.id(),
        kind.name(),
        own.scaleMm() == null ? kind.scale() : Length.mm(own.scaleMm()),
        own.tuning().isEmpty() ? kind.strings() : own.tuning(),
        kind.frets(),
        kind.jointFret(),
        kind.readAt(),
        kind.prior(),
        windows(kind, own),
        made);
  }

  private static Map<Quantity, Map<Style, Ends>> windows(Kind kind, Event.Own own) {
    Map<Quantity, Map<Style, Ends>> all = new EnumMap<>(Quantity.class);
    all.putAll(kind.windows());
    special(all, kind, Quantity.NUT_CLEARANCE, own.nut());
    special(all, kind, Quantity.INTONATION, own.bridge());
    special(all, kind, Quantity.PICKUP_GAP, own.pickup());
    Map<Aim, Window> aims = own.windows();
    lay(all, kind, Quantity.RELIEF, aims.get(Aim.RELIEF), aims.get(Aim.RELIEF));
    Window nut = aims.get(Aim.NUT_CLEARANCE);
    lay(all, kind, Quantity.NUT_CLEARANCE, nut, nut);
    lay(all, kind, Quantity.ACTION, aims.get(Aim.ACTION_LOW), aims.get(Aim.ACTION_HIGH));
    lay(all, kind, Quantity.INTONATION, aims.get(Aim.INTONATION), aims.get(Aim.INTONATION));
    lay(all, kind, Quantity.PICKUP_GAP, aims.get(Aim.PICKUP_LOW), aims.get(Aim.PICKUP_HIGH));
    return all;
  }

  /** Takes the kind's window for a nut, a bridge or a pickup like this one, where it has one. */
  private static void special(
      Map<Quantity, Map<Style, Ends>> all, Kind kind, Quantity quantity, @Nullable Worded one) {
    Ends ends =
        one == null ? null : kind.make().special().getOrDefault(quantity, Map.of()).get(one.word());
    if (ends != null) {
      Map<Style, Ends> styles = new EnumMap<>(Style.class);
      kind.styles().forEach(style -> styles.put(style, ends));
      all.put(quantity, styles);
    }
  }

  private static void lay(
      Map<Quantity, Map<Style, Ends>> all,
      Kind kind,
      Quantity quantity,
      @Nullable Window low,
      @Nullable Window high) {
    if (low == null && high == null) {
      return;
    }
    Map<Style, Ends> styles = new EnumMap<>(Style.class);
    Map<Style, Ends> before = all.getOrDefault(quantity, Map.of());
    for (Style style : kind.styles()) {
      Ends ends = before.get(style);
      Window lowest = low != null ? low : ends == null ? high : ends.low();
      Window highest = high != null ? high : ends == null ? low : ends.high();
      if (lowest != null && highest != null) {
        Map<Integer, Window> single = low != null || ends == null ? Map.of() : ends.own();
        styles.put(style, new Ends(lowest, highest, single, SOURCE));
      }
    }
    all.put(quantity, styles);
  }
}
