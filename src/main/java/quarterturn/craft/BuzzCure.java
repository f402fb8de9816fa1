package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Length;

/**
 * What would make a string clear every fret for a player's stroke, by the least change: nothing, a
 * little more relief within its window, or a higher action.
 *
 * <p>Relief is tried first in steps of 0.01 mm, the saddle left alone (so the action moves with
 * it), then the action at fret 12 in steps of 0.05 mm, the neck left alone. The limits of {@link
 * Neck}, {@link StringLine} and {@link Pluck} hold; what comes of it is a place to look and a
 * direction, not a promise.
 *
 * @param way what to change
 * @param amount how far, in millimetres of relief or of action at fret 12
 * @param found the map as it is
 */
public record BuzzCure(Way way, Length amount, ContactMap found) {
  private static final double RELIEF_STEP_MM = 0.01;
  private static final double ACTION_STEP_MM = 0.05;
  private static final double MOST_ACTION_MM = 1.5;

  /** The ways to cure a buzz. */
  public enum Way {
    /** The string clears every fret as it is set up. */
    NOTHING,
    RELIEF,
    SADDLE,
    /** Neither change is enough within its limits: another cause, or another touch. */
    NEITHER
  }

  /**
   * Finds the cure for one string.
   *
   * @param relief as read, in millimetres
   * @param most the most relief that is wanted, in millimetres
   */
  public static BuzzCure of(
      Scale scale,
      int joint,
      Held held,
      double relief,
      double most,
      Length nutHeight,
      Length action,
      Force tension,
      Pluck pluck,
      int last) {
    Neck neck = Neck.uniform(scale, joint, Length.mm(relief), held);
    StringLine line = StringLine.withAction(neck, nutHeight, 12, action);
    ContactMap found = ContactMap.of(line, tension, pluck, last);
    if (found.leastMm() >= 0) {
      return new BuzzCure(Way.NOTHING, Length.mm(0), found);
    }
    double gain = StringLine.actionPerRelief(neck, 12, held);
    for (double more = RELIEF_STEP_MM; relief + more <= most + 1e-9; more += RELIEF_STEP_MM) {
      Neck bent = Neck.uniform(scale, joint, Length.mm(relief + more), held);
      Length then = Length.mm(action.mm() + gain * more);
      StringLine higher = StringLine.withAction(bent, nutHeight, 12, then);
      if (ContactMap.of(higher, tension, pluck, last).leastMm() >= 0) {
        return new BuzzCure(Way.RELIEF, Length.mm(more), found);
      }
    }
    for (double more = ACTION_STEP_MM; more <= MOST_ACTION_MM; more += ACTION_STEP_MM) {
      StringLine higher = StringLine.withAction(neck, nutHeight, 12, Length.mm(action.mm() + more));
      if (ContactMap.of(higher, tension, pluck, last).leastMm() >= 0) {
        return new BuzzCure(Way.SADDLE, Length.mm(more), found);
      }
    }
    return new BuzzCure(Way.NEITHER, Length.mm(0), found);
  }
}
