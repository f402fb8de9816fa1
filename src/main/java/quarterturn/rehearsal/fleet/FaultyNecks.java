package quarterturn.rehearsal.fleet;

import java.util.EnumMap;
import java.util.Map;
import quarterturn.craft.Window;
import quarterturn.rehearsal.Crossings;
import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.NeckTraits;

/**
 * Counts the outcomes for faulty necks that have to go to a repairer, by fault and by first
 * reading.
 */
public final class FaultyNecks {
  /**
   * Distance from the window, in millimetres, beyond which no neck can read as inside it: three
   * standard deviations of a reading.
   */
  private static final double PLAINLY_MM = 0.036;

  private final Map<NeckFault, Map<FirstGap, Tally>> tallies = new EnumMap<>(NeckFault.class);
  private final Tally all = new Tally();
  private int missed;

  /** Adds the outcome of one neck, unless that neck need not be handed over. */
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
   * The outcomes of the necks with this fault.
   *
   * @param gap the result of the first reading
   */
  public Tally of(NeckFault fault, FirstGap gap) {
    return tallies
        .computeIfAbsent(fault, f -> new EnumMap<>(FirstGap.class))
        .computeIfAbsent(gap, g -> new Tally());
  }

  /** How many faulty necks were not handed over, over all faults. */
  public int missed() {
    return missed;
  }

  /** The outcomes of all faulty necks together. */
  public Tally all() {
    return all;
  }
}
