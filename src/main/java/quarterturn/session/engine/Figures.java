package quarterturn.session.engine;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.BuzzCure;
import quarterturn.craft.Held;
import quarterturn.craft.Intonation;
import quarterturn.craft.Neck;
import quarterturn.craft.SaddleEnds;
import quarterturn.craft.SaddleHeight;
import quarterturn.craft.Scale;
import quarterturn.craft.ScrewThread;
import quarterturn.craft.Shim;
import quarterturn.craft.StringArc;
import quarterturn.craft.StringLine;
import quarterturn.craft.Window;
import quarterturn.craft.WireList;
import quarterturn.craft.WoodMoisture;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Program;
import quarterturn.session.engine.figures.BridgeEnds;
import quarterturn.session.engine.figures.FretBuzz;
import quarterturn.session.engine.figures.StringSet;
import quarterturn.unit.Bracket;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Temperature;
import quarterturn.unit.Turn;

/** The results of a set-up's calculations in words, with what each assumes. */
record Figures(State state, Library library, Kind kind, Style style) {
  /** Usual screw of a saddle or a pickup (M3: ISO 261); common practice, no source. */
  private static final ScrewThread SCREW = ScrewThread.parse("M3");

  /** Usual length of a neck pocket; common practice, no source. */
  private static final Length POCKET = Length.mm(75);

  /** How far to set a string's saddle or pickup, in millimetres. */
  double amount(Adjustment what, int string) {
    Event.Read read = Values.last(state, what.quantity(), kind.strings().get(string));
    if (read == null || read.value() == null) {
      return 0;
    }
    Window window = kind.target(what.quantity(), style, string).window();
    double off = window.middleMm() - read.value();
    return switch (what) {
      case SADDLE_HEIGHT -> SaddleHeight.change(Length.mm(off), Quantity.OCTAVE).mm();
      case SADDLE_PLACE -> travel(read.value(), string);
      // A lower pickup has the larger gap.
      case PICKUP_HEIGHT -> -off;
    };
  }

  private double travel(double cents, int string) {
    try {
      return Intonation.travel(new Scale(kind.scale(string)), Quantity.OCTAVE, new Cents(cents))
          .mm();
    } catch (NotUnderstoodException e) {
      return 0;
    }
  }

  /** The instruction for one string: "Lower the saddle by 1.0 mm, ...". */
  String order(Adjustment what, int string) {
    double amount = amount(what, string);
    String size = Decimals.print(Math.abs(amount), 1) + " mm";
    return switch (what) {
      case SADDLE_HEIGHT ->
          (amount > 0 ? "Raise" : "Lower")
              + " its saddle by "
              + size
              + ": that is twice what is wanted at fret 12, and "
              + turns(amount)
              + " of each of its height screws, if they are M3 with 0.5 mm to a turn (measure"
              + " yours)";
      case SADDLE_PLACE ->
          "Move its saddle "
              + size
              + (amount > 0 ? " back, away from the nut" : " forward, toward the nut")
              + ", "
              + turns(amount)
              + " of an M3 screw; reckoned for a saddle near its ideal place and a string that"
              + " stretches as it did";
      case PICKUP_HEIGHT ->
          (amount > 0 ? "Raise" : "Lower")
              + " the pickup under it by "
              + size
              + ", "
              + turns(amount)
              + " of an M3 screw";
    };
  }

  /**
   * A length in turns of the screw, in words, rounded to quarters, which is all that a driver can
   * be turned to.
   */
  private static String turns(double mm) {
    double turns = SaddleHeight.turns(Length.mm(Math.abs(mm)), SCREW).turns();
    double quarters = Math.max(1, Math.rint(turns * 4)) / 4;
    String words = new Turn(quarters).toString();
    return "about " + words;
  }

  /** The change of action caused by the change of relief, calculated and measured. */
  String effect() {
    Bracket from = bracket(Values.first(state, Quantity.RELIEF, kind.string(Which.LOWEST)));
    Bracket to = bracket(Values.last(state, Quantity.RELIEF, kind.string(Which.LOWEST)));
    if (from == null || to == null || !to.bounded()) {
      return "The readings of the relief do not tell what it did to the action.";
    }
    double before = from.noGap() ? 0 : from.middleMm();
    double change = to.middleMm() - before;
    if (Math.abs(change) < library.limits().answers().seenMm()) {
      return "The relief is as it was found, and has not moved the action.";
    }
    Held held = Held.at(kind.jointFret(), kind.readAt());
    Neck neck = Neck.uniform(new Scale(kind.scale()), kind.jointFret(), Length.mm(0.3), held);
    double gain = StringLine.actionPerRelief(neck, Quantity.OCTAVE, held);
    String reckoned =
        "The relief went from "
            + (from.noGap() ? "none" : from.toString())
            + " to "
            + to
            + ". On a neck that bends evenly up to its joint that "
            + (change > 0 ? "raises" : "lowers")
            + " the action at fret 12 by "
            + (from.noGap() ? "at least " : "about ")
            + Decimals.print(Math.abs(gain * change), 1)
            + " mm";
    return reckoned + measured() + ".";
  }

  private String measured() {
    String lowest = kind.string(Which.LOWEST);
    Event.Read first = Values.first(state, Quantity.ACTION, lowest);
    Event.Read last = Values.last(state, Quantity.ACTION, lowest);
    boolean set =
        state.history().changes().stream()
            .anyMatch(c -> c.change().equals(Adjustment.SADDLE_HEIGHT.word()));
    if (set || first == null || last == null || first.value() == null || last.value() == null) {
      return "";
    }
    if (first.at().equals(last.at())) {
      return "";
    }
    double change = last.value() - first.value();
    return "; read, it "
        + (change > 0 ? "rose" : "fell")
        + " by "
        + Decimals.print(Math.abs(change), 1)
        + " mm, from "
        + Decimals.print(first.value(), 2)
        + " to "
        + Decimals.print(last.value(), 2);
  }

  /** The height of the strings over a rounded board. */
  String arc() {
    Length radius = kind.make().radius();
    Length spread = kind.make().spread();
    if (radius == null || spread == null) {
      return "Each string is set by its own gap over the fret, so that the strings follow the"
          + " fingerboard";
    }
    double[] drops = StringArc.dropMm(radius, spread, kind.strings().size() / kind.make().course());
    double inner = drops[0] - drops[drops.length / 2];
    return "On a fingerboard of "
        + Decimals.print(radius.mm(), 0)
        + " mm radius, with the outer strings "
        + Decimals.print(spread.mm(), 0)
        + " mm apart, the saddles in the middle stand "
        + Decimals.print(inner, 1)
        + " mm higher than the outer ones; so each string is set by its own gap over the fret";
  }

  /** The shim with which the saddles can reach their heights again. */
  String shim() {
    Event.Read read = Values.last(state, Quantity.ACTION, kind.string(Which.LOWEST));
    if (read == null || read.value() == null) {
      return "Without a reading of the action no shim can be reckoned";
    }
    Window window = kind.target(Quantity.ACTION, style, 0).window();
    double saddle =
        SaddleHeight.change(Length.mm(window.middleMm() - read.value()), Quantity.OCTAVE).mm();
    Length reach = Length.mm(new Scale(kind.scale()).speakingMm(kind.jointFret()));
    if (reach.mm() <= POCKET.mm()) {
      return "The saddles stand so near that the pocket has to be measured: "
          + Program.here().typed("reckon shim");
    }
    Shim shim = Shim.of(Length.mm(-saddle), POCKET, reach);
    return "To change the action at fret 12 by "
        + Decimals.print(Math.abs(saddle / 2), 2)
        + " mm the fingerboard has to tilt by "
        + Decimals.print(Math.abs(saddle), 1)
        + " mm at the saddles: a shim of "
        + Decimals.print(shim.thickness().mm(), 2)
        + " mm at the "
        + (shim.atFront() ? "headstock" : "bridge")
        + " side of a pocket 75 mm long whose edge is "
        + Decimals.print(reach.mm(), 0)
        + " mm from the saddles (measure yours). Start with 0.25 mm";
  }

  /** The diameters of a note; none where it says something else, as earlier versions took. */
  private List<Length> gauges(String noted) {
    try {
      return WireList.parse(noted, kind.strings().size());
    } catch (NotUnderstoodException e) {
      return List.of();
    }
  }

  /** The words noted in this session of a kind that is asked for again, or null. */
  private @Nullable String noted(Recorded what) {
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        String words = state.position().chosen().get(procedure.id() + "/" + step.id());
        if (step.records() == what && words != null) {
          return words;
        }
      }
    }
    return null;
  }

  /** What the play test found before anything was touched. */
  String playFound() {
    String found = noted(Recorded.PLAY_FOUND);
    return found == null || found.equals("-") ? "not tested" : found;
  }

  /** Where the frets that readings name lie, from the nut along the lowest string. */
  String fretPlaces() {
    return IntStream.of(1, kind.readAt(), Quantity.OCTAVE, kind.jointFret())
        .distinct()
        .sorted()
        .mapToObj(
            fret ->
                "fret "
                    + fret
                    + " "
                    + Decimals.print(new Scale(kind.scale()).fretMm(fret), 1)
                    + " mm")
        .collect(Collectors.joining(", ", "From the nut: ", ""));
  }

  /** How far to set the two ends of a bridge on posts. */
  String posts() {
    return ends().posts();
  }

  /** What a saddle in one piece lacks, and what is left of it above the bridge. */
  String saddle() {
    String typed = noted(Recorded.SADDLE_STANDS);
    try {
      return ends().saddle(typed == null ? null : BridgeEnds.stands(typed));
    } catch (NotUnderstoodException e) {
      return ends().saddle(null);
    }
  }

  private BridgeEnds ends() {
    int last = kind.strings().size() - 1;
    return new BridgeEnds(
        SaddleEnds.of(off(0), off(last), Quantity.OCTAVE),
        kind.string(Which.LOWEST),
        kind.string(Which.HIGHEST));
  }

  /** The wanted change of a string's action: to the middle of its window, none within it. */
  private Length off(int string) {
    Event.Read read = Values.last(state, Quantity.ACTION, kind.strings().get(string));
    Window window = kind.target(Quantity.ACTION, style, string).window();
    Double value = read == null ? null : read.value();
    boolean out = value != null && !Values.inside(value, window);
    return Length.mm(value != null && out ? window.middleMm() - value : 0);
  }

  /** The pull of the old and the new strings, and the direction in which the neck will move. */
  String pull() {
    String typed = noted(Recorded.NEW_GAUGES);
    List<Length> now = typed == null ? List.of() : gauges(typed);
    if (now.isEmpty() || kind.make().gauges().isEmpty()) {
      return "Without the new set's diameters its pull can't be reckoned; the next readings tell";
    }
    return StringSet.words(kind, now);
  }

  /**
   * Where the player's stroke meets the frets and what would clear them, or null where readings are
   * missing.
   */
  @Nullable BuzzCure cure() {
    Event.Before relief = latest(Quantity.RELIEF);
    Event.Before action = latest(Quantity.ACTION);
    return relief == null || action == null
        ? null
        : new FretBuzz(kind, style).cure(relief.bracket(), action.value());
  }

  /** Where the player's stroke meets the frets, in words. */
  String contact() {
    if (kind.make().fretless()) {
      return "Without frets there is none to strike; where it buzzes, the fingerboard is looked at";
    }
    BuzzCure cure = cure();
    return cure == null
        ? "Without relief and action nothing can be said of where it should buzz"
        : new FretBuzz(kind, style).words(cure);
  }

  /** The moisture content that wood comes to in this air, and the one before. */
  String moisture() {
    Double humidity = number(Quantity.HUMIDITY);
    if (humidity == null) {
      return "Without the humidity nothing can be said of the wood's moisture";
    }
    Double read = number(Quantity.TEMPERATURE);
    double celsius = read == null ? 21 : read;
    double now = percent(celsius, humidity);
    String text =
        "In "
            + Decimals.print(humidity, 0)
            + " % at "
            + Decimals.print(celsius, 0)
            + " C"
            + (read == null ? " (assumed)" : "")
            + " wood comes to "
            + Decimals.print(now, 1)
            + " % of moisture in time (Wood Handbook, chapter 4)";
    Event.Before before = earlier(Quantity.HUMIDITY);
    if (before == null || before.value() == null) {
      return text;
    }
    double then = percent(celsius, before.value());
    String drift = String.format(Locale.ROOT, "%+.1f", now - then);
    return text
        + "; at the last visit it was "
        + Decimals.print(then, 1)
        + " %, so "
        + drift
        + drifted();
  }

  private String drifted() {
    Event.Before before = earlier(Quantity.RELIEF);
    Event.Read now = Values.last(state, Quantity.RELIEF, kind.string(Which.LOWEST));
    Bracket then = before == null ? null : before.bracket();
    Bracket last = bracket(now);
    if (then == null || last == null || !then.bounded() || !last.bounded()) {
      return "";
    }
    double change = last.middleMm() - then.middleMm();
    return ". With it the relief went from "
        + then
        + " to "
        + last
        + (Math.abs(change) < library.limits().answers().seenMm()
            ? ", which is no more than a gauge can tell"
            : "");
  }

  /**
   * The last reading of a quantity on the lowest string, of this session or an earlier one; or
   * null.
   */
  private Event.@Nullable Before latest(Quantity quantity) {
    Event.Read read = Values.last(state, quantity, kind.string(Which.LOWEST));
    return read == null
        ? earlier(quantity)
        : new Event.Before(
            read.at(), quantity, read.string(), read.bracket(), read.value(), List.of());
  }

  private Event.@Nullable Before earlier(Quantity quantity) {
    Event.Before found = null;
    for (Event.Before before : state.started().before()) {
      boolean lowest = before.string() == null || before.string().equals(kind.string(Which.LOWEST));
      found = before.quantity() == quantity && lowest ? before : found;
    }
    return found;
  }

  private static double percent(double celsius, double humidity) {
    return WoodMoisture.percent(new Temperature(celsius), new Humidity(humidity));
  }

  private @Nullable Double number(Quantity quantity) {
    Event.Read read = Values.last(state, quantity, null);
    return read == null ? null : read.value();
  }

  private static @Nullable Bracket bracket(Event.@Nullable Read read) {
    return read == null ? null : read.bracket();
  }
}
