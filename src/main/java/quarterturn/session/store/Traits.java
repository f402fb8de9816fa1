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
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Handed;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.NeckJoint;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Instrument;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;

/** An instrument's facts as text, each as it is typed, and back. */
public final class Traits {
  /** Neither read nor kept; any name does to read a fact by itself. */
  private static final String ANY_NAME = "any";

  private Traits() {}

  /** What is known of an instrument, in the order of {@link Trait}. */
  public static Map<Trait, String> of(Instrument instrument) {
    Map<Trait, String> out = new EnumMap<>(Trait.class);
    Instrument.Build build = instrument.build();
    out.put(Trait.KIND, instrument.kind());
    put(out, Trait.STYLE, instrument.style(), Style::word);
    put(out, Trait.JOINT_FRET, instrument.jointFret(), String::valueOf);
    put(out, Trait.SCALE, build.scale(), Length::toString);
    put(out, Trait.TUNING, build.tuning(), Traits::notes);
    put(out, Trait.GAUGES, build.gauges(), Traits::wires);
    put(out, Trait.RADIUS, build.radius(), Radius::toString);
    put(out, Trait.NECK, build.neck(), NeckJoint::word);
    put(out, Trait.NUT, build.nut(), NutKind::word);
    put(out, Trait.ROD, build.rod(), RodKind::word);
    put(out, Trait.BRIDGE, build.bridge(), BridgeKind::word);
    put(out, Trait.HANDED, build.handed(), Handed::word);
    put(out, Trait.STRINGS, instrument.strings(), s -> s);
    for (Trait trait : Trait.values()) {
      Aim aim = trait.aim();
      if (aim != null) {
        put(out, trait, instrument.windows().get(aim), aim::text);
      }
    }
    return Collections.unmodifiableMap(out);
  }

  private static <T> void put(
      Map<Trait, String> out, Trait trait, @Nullable T value, Function<T, String> text) {
    if (value != null) {
      out.put(trait, text.apply(value));
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
   * An instrument by its facts.
   *
   * @param typed a text for each fact that is known, its kind among them
   * @throws NotUnderstoodException saying what is allowed
   */
  public static Instrument instrument(String name, Instant created, Map<Trait, String> typed) {
    String kind = typed.get(Trait.KIND);
    if (kind == null) {
      throw new NotUnderstoodException("an instrument needs a kind");
    }
    Instrument.Build build =
        new Instrument.Build(
            parsed(typed, Trait.SCALE, Length::parse),
            parsed(typed, Trait.TUNING, Traits::tuning),
            parsed(typed, Trait.GAUGES, WireList::parse),
            parsed(typed, Trait.RADIUS, Radius::parse),
            parsed(typed, Trait.NECK, t -> word(t, NeckJoint.values(), NeckJoint::word)),
            parsed(typed, Trait.NUT, t -> word(t, NutKind.values(), NutKind::word)),
            parsed(typed, Trait.ROD, t -> word(t, RodKind.values(), RodKind::word)),
            parsed(typed, Trait.BRIDGE, t -> word(t, BridgeKind.values(), BridgeKind::word)),
            parsed(typed, Trait.HANDED, t -> word(t, Handed.values(), Handed::word)));
    Map<Aim, Window> windows = new EnumMap<>(Aim.class);
    typed.forEach(
        (trait, text) -> {
          Aim aim = trait.aim();
          if (aim != null) {
            windows.put(aim, aim.window(text));
          }
        });
    return new Instrument(
        name,
        kind,
        parsed(typed, Trait.STYLE, t -> word(t, Style.values(), Style::word)),
        parsed(typed, Trait.JOINT_FRET, Traits::fret),
        typed.get(Trait.STRINGS),
        created,
        build,
        windows);
  }

  private static <T> @Nullable T parsed(
      Map<Trait, String> typed, Trait trait, Function<String, T> parser) {
    String text = typed.get(trait);
    return text == null ? null : parser.apply(text);
  }

  /**
   * Checks one fact by itself.
   *
   * @throws NotUnderstoodException saying what is allowed
   */
  static void check(Trait trait, String text) {
    Map<Trait, String> typed = new EnumMap<>(Trait.class);
    typed.put(Trait.KIND, ANY_NAME);
    typed.put(trait, text);
    instrument(ANY_NAME, Instant.EPOCH, typed);
  }

  /**
   * Checks one fact by itself and against the kind.
   *
   * @throws NotUnderstoodException saying what is allowed
   */
  public static void check(Trait trait, String text, Kind kind) {
    check(trait, text);
    if (trait == Trait.JOINT_FRET) {
      int fret = fret(text);
      if (fret <= kind.readAt() || fret > kind.frets()) {
        throw new NotUnderstoodException(
            "the joint fret of %s lies between %d and %d, not %d"
                .formatted(kind.id(), kind.readAt() + 1, kind.frets(), fret));
      }
    } else if (trait == Trait.TUNING) {
      strings(kind, "notes", tuning(text).size());
    } else if (trait == Trait.GAUGES) {
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
    String number = text.strip();
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
    throw new NotUnderstoodException(
        "\""
            + Printable.of(text)
            + "\" is none of "
            + Arrays.stream(values).map(word).collect(Collectors.joining(", ")));
  }

  /**
   * What holds for an instrument without a fact of its own, or null where the kind says nothing.
   *
   * @param traits what is known of it, its style among them
   */
  public static @Nullable String usual(Trait trait, Map<Trait, String> traits, Kind kind) {
    return switch (trait) {
      case JOINT_FRET -> kind.jointFret() + ", as usual for its kind";
      case SCALE -> kind.scale() + ", as usual for its kind";
      case TUNING -> String.join(" ", kind.strings()) + ", as usual for its kind";
      case WINDOW_RELIEF -> relief(traits.get(Trait.STYLE), kind);
      default -> null;
    };
  }

  private static @Nullable String relief(@Nullable String style, Kind kind) {
    if (style == null) {
      return null;
    }
    Kind.Target target = kind.target(Style.valueOf(style.toUpperCase(Locale.ROOT)));
    return target.window() + " (" + target.source() + ")";
  }
}
