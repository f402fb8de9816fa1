package quarterturn.rehearsal;

import java.util.EnumMap;
import java.util.Map;
import quarterturn.craft.Window;

/** Necks that have to be handed over, by what is wrong with them and by what gap was found. */
public final class FaultyNecks {
  /**
   * From so many millimetres outside the window on, a neck can't be taken for one that stands in
   * it: three errors of a reading.
   */
  private static final double PLAINLY_MM = 0.036;

  private final Map<NeckFault, Map<FirstGap, Tally>> tallies = new EnumMap<>(NeckFault.class);
  private final Tally all = new Tally();
  private int missed;

  /** Takes in one neck, unless it need not be handed over. */
  void add(NeckTraits traits, Outcome outcome, Window window) {
    NeckFault fault = traits.fault();
    Window wide = new Window(window.lowMm() - PLAINLY_MM, window.highMm() + PLAINLY_MM);
    if (!fault.needsRepairer(Crossings.side(wide, traits.reliefMm()))) {
      return;
    }
    of(fault, outcome.gap()).add(outcome);
    all.add(outcome);
    missed += outcome.handedOver() ? 0 : 1;
  }

  /**
   * What became of those with this fault.
   *
   * @param gap what was found when it was first read
   */
  public Tally of(NeckFault fault, FirstGap gap) {
    return tallies
        .computeIfAbsent(fault, f -> new EnumMap<>(FirstGap.class))
        .computeIfAbsent(gap, g -> new Tally());
  }

  /** How many were not handed over, whatever their fault. */
  public int missed() {
    return missed;
  }

  /** All of them together. */
  public Tally all() {
    return all;
  }
}
