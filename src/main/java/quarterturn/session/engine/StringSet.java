package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.Scale;
import quarterturn.craft.SetPull;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Temperament;
import quarterturn.procedure.kind.Kind;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
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
}
