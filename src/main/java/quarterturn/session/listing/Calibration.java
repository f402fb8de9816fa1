package quarterturn.session.listing;

import java.util.List;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.unit.Bracket;

/**
 * How often turns of a rod did what was expected of them.
 *
 * <p>With a turn stands on record in which range the relief was expected after it, nine times in
 * ten. It came true where the middle of the reading after the turn lies in that range; where no gap
 * was read, if the range begins below that reading's thinnest leaf. A turn tells nothing that was
 * not made as it was asked for, that has no reading before it and after it in its session, or whose
 * record is older than that expectations were kept.
 *
 * @param right how many turns did what was expected
 * @param turns of how many
 */
public record Calibration(int right, int turns) {
  public static final Calibration NONE = new Calibration(0, 0);

  /** The calibration over the turns of one session. */
  public static Calibration of(List<Event> events) {
    Calibration all = NONE;
    Event.Offered offered = null;
    List<Event.Past> turns = PastTurns.of(events);
    for (Event event : Corrections.standing(events)) {
      if (event instanceof Event.Offered asked) {
        offered = asked;
      } else if (event instanceof Event.OnRod rod) {
        Bracket expected = offered == null ? null : offered.expected();
        boolean asFor = offered != null && rod.sure() && rod.moved().equals(offered.turn());
        offered = null;
        Event.Past made =
            turns.stream().filter(turn -> turn.at().equals(rod.at())).findFirst().orElse(null);
        if (expected != null && asFor && made != null) {
          all = all.plus(of(made, expected));
        }
      }
    }
    return all;
  }

  private static Calibration of(Event.Past made, Bracket expected) {
    Bracket after = made.after();
    return made.before() == null || after == null
        ? NONE
        : new Calibration(within(after, expected) ? 1 : 0, 1);
  }

  /** Whether a reading is what a range told. */
  static boolean within(Bracket reading, Bracket range) {
    return reading.noGap()
        ? range.lowMm() < reading.highMm()
        : range.lowMm() <= reading.middleMm() && reading.middleMm() <= range.highMm();
  }

  public Calibration plus(Calibration other) {
    return new Calibration(right + other.right, turns + other.turns);
  }

  /** "7 times of 8". */
  public String share() {
    return right + (right == 1 ? " time of " : " times of ") + turns;
  }
}
