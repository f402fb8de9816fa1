package quarterturn.session.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Radius;
import quarterturn.craft.Window;
import quarterturn.craft.WireList;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Handed;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.NeckJoint;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Instrument;
import quarterturn.unit.Decimals;
import quarterturn.unit.Digits;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;

/** Converts an instrument's facts to typed text and back. */
public final class FormFields {
  /** A name for checking a fact by itself, where the name does not matter. */
  private static final String ANY_NAME = "any";

  private FormFields() {}

  /** The known facts of an instrument, in the order of {@link FormField}. */
  public static Map<FormField, String> of(Instrument instrument) {
    Map<FormField, String> out = new EnumMap<>(FormField.class);
    Instrument.Build build = instrument.build();
    out.put(FormField.KIND, instrument.kind());
    put(out, FormField.STYLE, instrument.style(), Style::word);
    put(out, FormField.JOINT_FRET, instrument.jointFret(), String::valueOf);
    put(out, FormField.SCALE, build.scale(), Length::toString);
    put(out, FormField.TUNING, build.tuning(), FormFields::notes);
    put(out, FormField.GAUGES, build.gauges(), FormFields::wires);
    put(out, FormField.RADIUS, build.radius(), Radius::toString);
    put(out, FormField.NECK, build.neck(), NeckJoint::word);
    put(out, FormField.NUT, build.nut(), NutKind::word);
    put(out, FormField.ROD, build.rod(), RodKind::word);
    put(out, FormField.BRIDGE, build.bridge(), BridgeKind::word);
    put(out, FormField.PICKUP, build.pickup(), PickupKind::word);
    put(out, FormField.HANDED, build.handed(), Handed::word);
    put(out, FormField.STRINGS, instrument.strings(), s -> s);
    put(out, FormField.TICKET, instrument.job().ticket(), s -> s);
    put(out, FormField.CUSTOMER, instrument.job().customer(), s -> s);
    for (FormField field : FormField.values()) {
      Aim aim = field.aim();
      if (aim != null) {
        put(out, field, instrument.windows().get(aim), aim::text);
      }
    }
    return Collections.unmodifiableMap(out);
  }

  private static <T> void put(
      Map<FormField, String> out, FormField field, @Nullable T value, Function<T, String> text) {
    if (value != null) {
      out.put(field, text.apply(value));
    }
  }

  private static String notes(List<Note> notes) {
    return notes.stream().map(Note::toString).collect(Collectors.joining(" "));
  }

  private static String wires(List<Length> gauges) {
    return gauges.stream()
        .map(g -> Decimals.plain(g.mm()))
        .collect(Collectors.joining(" ", "", " mm"));
  }

  /**
   * The instrument with the given facts.
   *
   * @param typed a text for each known fact, among them the kind
   * @throws NotUnderstoodException saying what is allowed
   */
  public static Instrument instrument(String name, Instant created, Map<FormField, String> typed) {
    String kind = typed.get(FormField.KIND);
    if (kind == null) {
      throw new NotUnderstoodException("an instrument needs a kind");
    }
    Instrument.Build build =
        new Instrument.Build(
            parsed(typed, FormField.SCALE, Length::parse),
            parsed(typed, FormField.TUNING, FormFields::tuning),
            parsed(typed, FormField.GAUGES, WireList::parse),
            parsed(typed, FormField.RADIUS, Radius::parse),
            parsed(typed, FormField.NECK, t -> word(t, NeckJoint.values(), NeckJoint::word)),
            parsed(typed, FormField.NUT, t -> word(t, NutKind.values(), NutKind::word)),
            parsed(typed, FormField.ROD, t -> word(t, RodKind.values(), RodKind::word)),
            parsed(typed, FormField.BRIDGE, t -> word(t, BridgeKind.values(), BridgeKind::word)),
            parsed(typed, FormField.PICKUP, t -> word(t, PickupKind.values(), PickupKind::word)),
            parsed(typed, FormField.HANDED, t -> word(t, Handed.values(), Handed::word)));
    Map<Aim, Window> windows = new EnumMap<>(Aim.class);
    typed.forEach(
        (field, text) -> {
          Aim aim = field.aim();
          if (aim != null) {
            windows.put(aim, aim.window(text));
          }
        });
    return new Instrument(
        name,
        kind,
        parsed(typed, FormField.STYLE, t -> word(t, Style.values(), Style::word)),
        parsed(typed, FormField.JOINT_FRET, FormFields::fret),
        typed.get(FormField.STRINGS),
        created,
        build,
        windows,
        new Instrument.Job(typed.get(FormField.TICKET), typed.get(FormField.CUSTOMER)));
  }

  private static <T> @Nullable T parsed(
      Map<FormField, String> typed, FormField field, Function<String, T> parser) {
    String text = typed.get(field);
    return text == null ? null : parser.apply(text);
  }

  /**
   * Checks one fact by itself.
   *
   * @throws NotUnderstoodException saying what is allowed
   */
  static void check(FormField field, String text) {
    Map<FormField, String> typed = new EnumMap<>(FormField.class);
    typed.put(FormField.KIND, ANY_NAME);
    typed.put(field, text);
    instrument(ANY_NAME, Instant.EPOCH, typed);
  }

  /**
   * Checks one fact by itself and against the kind.
   *
   * @throws NotUnderstoodException saying what is allowed
   */
  public static void check(FormField field, String text, Kind kind) {
    if (field == FormField.STYLE) {
      word(text, kind.styles().toArray(Style[]::new), Style::word);
    }
    check(field, text);
    if (field == FormField.JOINT_FRET) {
      int fret = fret(text);
      if (fret <= kind.readAt() || fret > kind.frets()) {
        throw new NotUnderstoodException(
            "the joint fret of %s lies between %d and %d, not %d"
                .formatted(kind.id(), kind.readAt() + 1, kind.frets(), fret));
      }
    } else if (field == FormField.TUNING) {
      strings(kind, "notes", tuning(text).size());
    } else if (field == FormField.GAUGES) {
      strings(kind, "gauges", WireList.parse(text).size());
    }
  }

  private static void strings(Kind kind, String what, int given) {
    int strings = kind.strings().size();
    if (given != strings) {
      throw new NotUnderstoodException(
          "%s has %d strings; give as many %s, not %d".formatted(kind.id(), strings, what, given));
    }
  }

  private static List<Note> tuning(String text) {
    return Arrays.stream(text.strip().split("[\\s,]+", -1)).map(Note::parse).toList();
  }

  private static Integer fret(String text) {
    String number = Digits.plain(text);
    if (!number.matches("\\d{1,3}")) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(text) + "\" is not a fret; type for example 17");
    }
    return Integer.valueOf(number);
  }

  private static <T> T word(String text, T[] values, Function<T, String> word) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    for (T value : values) {
      if (word.apply(value).equals(typed)) {
        return value;
      }
    }
    List<String> words = Arrays.stream(values).map(word).toList();
    throw new NotUnderstoodException(
        "\""
            + Printable.of(text)
            + "\" is none of "
            + String.join(", ", words)
            + Quote.asking(typed, words));
  }

  /**
   * The value that holds where an instrument has no fact of its own, or null where its kind has
   * none.
   *
   * @param fields the known facts, among them the style
   */
  public static @Nullable String usual(FormField field, Map<FormField, String> fields, Kind kind) {
    return switch (field) {
      case JOINT_FRET -> kind.jointFret() + ", as usual for its kind";
      case SCALE -> kind.scale() + ", as usual for its kind";
      case TUNING -> String.join(" ", kind.notes()) + ", as usual for its kind";
      case WINDOW_RELIEF -> relief(fields.get(FormField.STYLE), kind);
      default -> null;
    };
  }

  /** Words for a fact that nobody said, where the kind has none either. */
  static String unsaid(FormField field) {
    return switch (field) {
      case STYLE -> "asked when work begins";
      case NUT, ROD, BRIDGE, PICKUP -> "as its kind has it";
      case TICKET, CUSTOMER -> "none";
      default -> field.aim() == null ? "not known" : "none of its own";
    };
  }

  private static @Nullable String relief(@Nullable String style, Kind kind) {
    Style known = style == null ? null : kind.styled(Style.valueOf(style.toUpperCase(Locale.ROOT)));
    if (known == null) {
      return null;
    }
    Kind.Target target = kind.target(known);
    return target.window() + " (" + target.source() + ")";
  }
}
