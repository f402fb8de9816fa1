package quarterturn.session.engine.figures;

import java.util.List;
import quarterturn.craft.Scale;
import quarterturn.craft.SetPull;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Temperament;
import quarterturn.procedure.kind.Kind;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.Note;

/** Calculates the pull of a set of strings from their diameters. */
public final class StringSet {
  /**
   * Least diameter of a wound string in millimetres, thinner ones being plain steel; common
   * practice, no source.
   */
  private static final double WOUND_FROM_MM = 0.5;

  /** Diameter of a wound string's core as a share of the string's; an estimate. */
  private static final double CORE = 0.43;

  private StringSet() {}

  /** A string of a diameter, plain or wound as is usual. */
  public static StringGauge usual(Length diameter) {
    return diameter.mm() < WOUND_FROM_MM
        ? StringGauge.plain(diameter)
        : StringGauge.wound(diameter, Length.mm(CORE * diameter.mm()));
  }

  /** The pull of the kind's usual set and of a new one, and where the neck will go, in words. */
  public static String words(Kind kind, List<Length> now) {
    Force before = pull(kind, kind.make().gauges());
    Force after = pull(kind, now);
    double percent = 100 * (after.newtons() / before.newtons() - 1);
    String way =
        Math.abs(percent) < 2
            ? "about the same, and the neck should hardly move"
            : percent > 0
                ? Decimals.print(percent, 0) + " % more, so expect more relief"
                : Decimals.print(-percent, 0) + " % less, so expect less relief";
    return "The usual set for this kind pulls about "
        + Decimals.print(before.newtons(), 0)
        + " N, the new one about "
        + Decimals.print(after.newtons(), 0)
        + " N at this tuning: "
        + way
        + ". Reckoned from diameters, with cores of 0.43 of a wound string";
  }

  /** The pull of a whole set at the kind's tuning. */
  private static Force pull(Kind kind, List<Length> gauges) {
    double newtons = 0;
    for (int i = 0; i < gauges.size(); i++) {
      Note note = Note.parse(kind.notes().get(i));
      var string = new SetPull.TunedString(note, usual(gauges.get(i)));
      Scale scale = new Scale(kind.scale(i));
      newtons += new SetPull(scale, List.of(string), Temperament.ISO_16).total().newtons();
    }
    return Force.newtons(newtons);
  }

  /** The pull of the lowest string of the kind. */
  static Force lowest(Kind kind) {
    return pull(kind, kind.make().gauges().subList(0, 1));
  }
}
