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

/** Lays an instrument's own facts over those of its kind. */
public final class OwnMake {
  private static final String SOURCE = "this instrument's own window";

  private OwnMake() {}

  /** The facts in an instrument's file that replace its kind's, or null where there are none. */
  public static Event.@Nullable Own of(Instrument instrument) {
    Instrument.Build build = instrument.build();
    Length scale = build.scale();
    Radius radius = build.radius();
    boolean flat = radius == null || Double.isInfinite(radius.mm());
    List<String> tuning = build.tuning() == null ? List.of() : notes(build.tuning());
    List<Double> gauges = build.gauges() == null ? List.of() : mm(build.gauges());
    boolean fixed = build.bridge() == BridgeKind.FIXED;
    boolean none =
        scale == null
            && radius == null
            && tuning.isEmpty()
            && gauges.isEmpty()
            && !fixed
            && instrument.windows().isEmpty();
    return none
        ? null
        : new Event.Own(
            scale == null ? null : Double.valueOf(scale.mm()),
            tuning,
            gauges,
            flat || radius == null ? null : Double.valueOf(radius.mm()),
            fixed,
            instrument.windows());
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
    Make made =
        new Make(
            own.radiusMm() == null ? make.radius() : Length.mm(own.radiusMm()),
            make.spread(),
            gauges.size() == strings ? gauges : List.of(),
            own.fixedSaddles() ? Make.Saddles.FIXED : make.saddles());
    return new Kind(
        kind.id(),
        kind.name(),
        own.scaleMm() == null ? kind.scale() : Length.mm(own.scaleMm()),
        own.tuning().isEmpty() ? kind.strings() : own.tuning(),
        kind.frets(),
        kind.jointFret(),
        kind.readAt(),
        kind.prior(),
        windows(kind, own.windows()),
        made);
  }

  private static Map<Quantity, Map<Style, Ends>> windows(Kind kind, Map<Aim, Window> own) {
    Map<Quantity, Map<Style, Ends>> all = new EnumMap<>(Quantity.class);
    all.putAll(kind.windows());
    lay(all, Quantity.RELIEF, own.get(Aim.RELIEF), own.get(Aim.RELIEF));
    lay(all, Quantity.NUT_CLEARANCE, own.get(Aim.NUT_CLEARANCE), own.get(Aim.NUT_CLEARANCE));
    lay(all, Quantity.ACTION, own.get(Aim.ACTION_LOW), own.get(Aim.ACTION_HIGH));
    lay(all, Quantity.INTONATION, own.get(Aim.INTONATION), own.get(Aim.INTONATION));
    lay(all, Quantity.PICKUP_GAP, own.get(Aim.PICKUP_LOW), own.get(Aim.PICKUP_HIGH));
    return all;
  }

  private static void lay(
      Map<Quantity, Map<Style, Ends>> all,
      Quantity quantity,
      @Nullable Window low,
      @Nullable Window high) {
    if (low == null && high == null) {
      return;
    }
    Map<Style, Ends> styles = new EnumMap<>(Style.class);
    Map<Style, Ends> before = all.getOrDefault(quantity, Map.of());
    for (Style style : Style.values()) {
      Ends ends = before.get(style);
      Window lowest = low != null ? low : ends == null ? high : ends.low();
      Window highest = high != null ? high : ends == null ? low : ends.high();
      if (lowest != null && highest != null) {
        styles.put(style, new Ends(lowest, highest, SOURCE));
      }
    }
    all.put(quantity, styles);
  }
}
