package quarterturn.session;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Radius;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Handed;
import quarterturn.procedure.kind.NeckJoint;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;

/**
 * One instrument of the user's.
 *
 * @param name its name in small letters, also the name of its file
 * @param kind id of its kind
 * @param style how it is played, or null where that is asked each time
 * @param jointFret its own joint fret, 1 to 36, or null for its kind's
 * @param strings a note on its present strings, or null
 * @param created when it was added
 * @param build its dimensions and tuning
 * @param windows its own windows, in millimetres and cents
 * @param job whose it is and by which ticket; it stands here alone, never in a session's record
 */
public record Instrument(
    String name,
    String kind,
    @Nullable Style style,
    @Nullable Integer jointFret,
    @Nullable String strings,
    Instant created,
    Build build,
    Map<Aim, Window> windows,
    Job job) {
  private static final int LAST_FRET = 36;
  private static final int LONGEST_NOTE = 200;

  public Instrument {
    name = Names.check("an instrument", name);
    kind = Names.check("a kind of instrument", kind);
    if (jointFret != null && (jointFret < 1 || jointFret > LAST_FRET)) {
      throw new NotUnderstoodException(
          "the joint fret lies between 1 and " + LAST_FRET + ", not " + jointFret);
    }
    line("the note on the strings", strings);
    Map<Aim, Window> kept = new EnumMap<>(Aim.class);
    windows.forEach(
        (aim, window) -> kept.put(aim, aim.check(window, BoundsReader.of(aim.quantity()))));
    windows = Collections.unmodifiableMap(kept);
  }

  /** One of no ticket and no customer. */
  public Instrument(
      String name,
      String kind,
      @Nullable Style style,
      @Nullable Integer jointFret,
      @Nullable String strings,
      Instant created,
      Build build,
      Map<Aim, Window> windows) {
    this(name, kind, style, jointFret, strings, created, build, windows, Job.NONE);
  }

  /** This instrument without its ticket and its customer. */
  public Instrument forgotten() {
    return new Instrument(name, kind, style, jointFret, strings, created, build, windows, Job.NONE);
  }

  private static void line(String what, @Nullable String text) {
    if (text != null && (text.length() > LONGEST_NOTE || !text.equals(Printable.of(text)))) {
      throw new NotUnderstoodException(
          what + " must be one line of at most " + LONGEST_NOTE + " characters");
    }
  }

  /** The job that an instrument is in the house for; null where that was not said. */
  public record Job(@Nullable String ticket, @Nullable String customer) {
    public static final Job NONE = new Job(null, null);

    public Job {
      ticket = said(ticket);
      customer = said(customer);
      line("the ticket", ticket);
      line("the customer", customer);
    }

    /** What was said, such as "ticket 4711, customer Ana"; empty where nothing was. */
    public String known() {
      return Stream.of(
              ticket == null ? "" : "ticket " + ticket,
              customer == null ? "" : "customer " + customer)
          .filter(one -> !one.isEmpty())
          .collect(Collectors.joining(", "));
    }

    private static @Nullable String said(@Nullable String text) {
      return text == null || text.isBlank() ? null : text.strip();
    }
  }

  /**
   * An instrument's dimensions and tuning. Null stands for its kind's value, or for an unknown one.
   * Lengths are kept to a ten-thousandth of a millimetre.
   *
   * @param scale 300 to 1000 mm
   * @param tuning notes of the open strings, the lowest string first, 1 to 12
   * @param gauges diameters of the strings in the same order, as many
   * @param radius of the board's top
   * @param nut what guides the strings; over a zero fret they are right to touch fret 1
   * @param bridge what can be moved at the bridge
   * @param pickup the pickup whose gap is read
   */
  public record Build(
      @Nullable Length scale,
      @Nullable List<Note> tuning,
      @Nullable List<Length> gauges,
      @Nullable Radius radius,
      @Nullable NeckJoint neck,
      @Nullable NutKind nut,
      @Nullable RodKind rod,
      @Nullable BridgeKind bridge,
      @Nullable PickupKind pickup,
      @Nullable Handed handed) {
    /** A build with every value the kind's or unknown. */
    public static final Build UNKNOWN =
        new Build(null, null, null, null, null, null, null, null, null, null);

    private static final double SHORTEST_MM = 300;
    private static final double LONGEST_MM = 1000;
    private static final int MOST_STRINGS = 12;

    public Build {
      if (scale != null) {
        scale = Length.mm(Decimals.kept(scale.mm()));
        if (scale.mm() < SHORTEST_MM || scale.mm() > LONGEST_MM) {
          throw new NotUnderstoodException(
              "a scale lies between 300 and 1000 mm, not " + scale + "; write inches as 34in");
        }
      }
      if (tuning != null) {
        tuning = List.copyOf(tuning);
        count("notes", tuning.size());
      }
      if (gauges != null) {
        gauges =
            gauges.stream()
                .map(g -> StringGauge.checkWire(Length.mm(Decimals.kept(g.mm()))))
                .toList();
        count("gauges", gauges.size());
        if (tuning != null && tuning.size() != gauges.size()) {
          throw new NotUnderstoodException(
              "give as many gauges as notes: " + tuning.size() + ", not " + gauges.size());
        }
      }
    }

    private static void count(String what, int count) {
      if (count < 1 || count > MOST_STRINGS) {
        throw new NotUnderstoodException(
            "give 1 to " + MOST_STRINGS + " " + what + ", not " + count);
      }
    }
  }
}
