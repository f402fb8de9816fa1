package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Scale;
import quarterturn.craft.SetPull;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Temperament;
import quarterturn.procedure.kind.Kind;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

/** Calculates the pull of a set of strings from their diameters. */
final class StringSet {
  /**
   * Least diameter of a wound string in millimetres, thinner ones being plain steel; common
   * practice, no source.
   */
  private static final double WOUND_FROM_MM = 0.5;

  /** Diameter of a wound string's core as a share of the string's; an estimate. */
  private static final double CORE = 0.43;

  private StringSet() {}

  /** A string of a diameter, plain or wound as is usual. */
  static StringGauge gauge(Length diameter) {
    return diameter.mm() < WOUND_FROM_MM
        ? StringGauge.plain(diameter)
        : StringGauge.wound(diameter, Length.mm(CORE * diameter.mm()));
  }

  /** The pull of a whole set at the kind's tuning. */
  static Force pull(Kind kind, List<Length> gauges) {
    List<SetPull.TunedString> strings = new ArrayList<>();
    for (int i = 0; i < gauges.size(); i++) {
      Note note = Note.parse(kind.strings().get(i));
      strings.add(new SetPull.TunedString(note, gauge(gauges.get(i))));
    }
    return new SetPull(new Scale(kind.scale()), strings, Temperament.ISO_16).total();
  }

  /** The pull of the lowest string of the kind. */
  static Force lowest(Kind kind) {
    return pull(kind, kind.make().gauges().subList(0, 1));
  }

  /**
   * Diameters as typed, one for each string of the kind: "105 85 65 45" in thousandths of an inch,
   * ".105 .085", "2.67 mm 2.16 mm"; null for any other text.
   */
  static @Nullable List<Length> parse(String typed, Kind kind) {
    String text = typed.toLowerCase(Locale.ROOT).replace(" mm", "mm").replace(" in", "in");
    List<Length> gauges = new ArrayList<>();
    for (String one : text.strip().split("[\\s,/-]+", -1)) {
      try {
        gauges.add(one(one));
      } catch (NotUnderstoodException e) {
        return null;
      }
    }
    boolean all = gauges.size() == kind.strings().size();
    return all && gauges.stream().allMatch(g -> g.mm() > 0.1 && g.mm() < 6) ? gauges : null;
  }

  private static Length one(String typed) {
    if (typed.matches("\\d{1,3}")) {
      return Length.inches(Integer.parseInt(typed) / 1000.0);
    }
    return typed.matches("0?\\.\\d+") ? Length.parse(typed + "in") : Length.parse(typed);
  }
}
