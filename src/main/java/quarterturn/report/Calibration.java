package quarterturn.report;

import java.util.List;
import quarterturn.craft.rod.Belief;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Range;
import quarterturn.procedure.Limits;
import quarterturn.session.Event;
import quarterturn.session.engine.Story;
import quarterturn.unit.Bracket;

/**
 * How often turns of a rod did what was expected of them.
 *
 * <p>Before a turn a range of relief is expected in which the neck should stand after it nine times
 * in ten. It came true where the middle of the reading after the turn lies in that range; where no
 * gap was read, if the range begins below that reading's thinnest leaf. The range is reckoned from
 * the turns and readings before, by today's model, since records do not hold it. A turn without a
 * reading before it and one after it in the same session tells nothing and is left out.
 *
 * @param right how many turns did what was expected
 * @param turns of how many
 */
public record Calibration(int right, int turns) {
  public static final Calibration NONE = new Calibration(0, 0);

  /**
   * The calibration over all turns of one neck.
   *
   * @param past its turns, oldest first
   * @param known of such a neck before the first
   */
  public static Calibration of(List<Event.Past> past, Known known, Limits limits) {
    Calibration all = NONE;
    for (int i = 0; i < past.size(); i++) {
      Event.Past one = past.get(i);
      if (one.before() != null && one.after() != null) {
        Belief belief = Belief.of(known, Story.beforeLast(past.subList(0, i + 1), limits));
        boolean right = within(one.after(), belief.expect(one.turn()));
        all = all.plus(new Calibration(right ? 1 : 0, 1));
      }
    }
    return all;
  }

  /** Whether a reading is what a range told. */
  static boolean within(Bracket reading, Range range) {
    return reading.noGap()
        ? range.lowMm() < reading.highMm()
        : range.lowMm() <= reading.middleMm() && reading.middleMm() <= range.highMm();
  }

  public Calibration plus(Calibration other) {
    return new Calibration(right + other.right, turns + other.turns);
  }

  /**
   * Both shares in words.
   *
   * @param all over all necks, this one too
   */
  String words(Calibration all) {
    if (all.turns == 0) {
      return "How often the expected came true is not known yet: no turn was read before and after.";
    }
    return "What was expected came true "
        + (turns == 0 ? "" : share() + " on this neck, ")
        + all.share()
        + " on all necks here (nine in ten expected). It came true where the middle of the reading"
        + " after a turn lay in the range expected before it, reckoned as today; turns without both"
        + " readings are left out.";
  }

  private String share() {
    return right + (right == 1 ? " time of " : " times of ") + turns;
  }
}
