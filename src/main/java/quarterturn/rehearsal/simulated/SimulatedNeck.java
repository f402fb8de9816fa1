package quarterturn.rehearsal.simulated;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * A simulated neck that can be tuned, turned, left to rest and read. Its relief moves at once with
 * the rod, goes on creeping, drifts with the climate, and changes with the pull of the strings.
 *
 * <p>Time passes only through {@link #pass}, and chance comes from the given random: the same seed
 * and the same treatment give the same readings.
 */
public final class SimulatedNeck {
  private final NeckTraits traits;
  private final SplittableRandom random;
  private final List<Moved> moved = new ArrayList<>();
  private double hours;
  private double drift;
  private boolean slackened;
  private int way;
  private double slackLeft;
  private double stands;
  private int moves;
  private double net;
  private double mostNet;

  /** The relief in millimetres that one turn added at once, and the time of that turn in hours. */
  private record Moved(double mm, double atHours) {}

  public SimulatedNeck(NeckTraits traits, SplittableRandom random) {
    this.traits = traits;
    this.random = random;
  }

  public NeckTraits traits() {
    return traits;
  }

  /** The true relief with the strings at pitch, in millimetres, below zero for back bow. */
  public double relief() {
    double relief = traits.reliefMm() + drift;
    for (Moved move : moved) {
      relief += move.mm() * (1 + traits.creep().share(hours - move.atHours()));
    }
    return relief;
  }

  /** Adds relief in millimetres for the pull of another set of strings. */
  void push(double mm) {
    moved.add(new Moved(mm, hours));
  }

  /** Brings the relief back to where it was found, as other hands may do between two sessions. */
  public void setBack() {
    moved.clear();
    drift = 0;
  }

  /** Slackens every string by a whole tone. */
  public void detune() {
    slackened = true;
  }

  /** Brings every string to pitch. */
  public void tune() {
    slackened = false;
  }

  /** Lets time pass, in which the neck creeps and the climate drifts. */
  public void pass(Duration time) {
    double passed = Math.max(0, time.toSeconds()) / 3600.0;
    hours += passed;
    if (passed > 0) {
      drift += traits.driftMm() * Math.sqrt(passed / 24) * random.nextGaussian();
    }
  }

  /** A reading of the relief with leaves, with a careful person's error. */
  public Bracket read(Which which) {
    return read(which, 1, random);
  }

  /**
   * A reading with leaves, with a careful person's error.
   *
   * @param share the gap for each millimetre of relief: 1, or less where a part is read
   */
  public Bracket read(Which which, double share) {
    return read(which, share, random);
  }

  /** A reading with leaves by another careful person, whose errors come from another random. */
  public Bracket read(Which which, double share, SplittableRandom hand) {
    double gap = relief() - (slackened ? traits.pullMm() : 0);
    gap += which == Which.HIGHEST ? traits.edgesMm() : 0;
    return traits.feelers().read(share * gap + traits.noiseMm() * hand.nextGaussian());
  }

  /** How the nut would feel if it were turned this far with two fingers. */
  public Feel feel(Turn turn) {
    return feel(turn.turns(), bears(heldBy(turn.turns())));
  }

  /** Turns the nut with two fingers; a nut that can't be moved stays where it is. */
  public void turn(Turn wanted) {
    double turns = wanted.turns();
    if (turns == 0 || !traits.fault().turns()) {
      return;
    }
    moves++;
    net += turns;
    mostNet = Math.max(mostNet, Math.abs(net));
    double held = heldBy(turns);
    double bears = bears(held);
    slackLeft = Math.max(0, slackBefore(turns) - Math.abs(turns));
    way = turns > 0 ? 1 : -1;
    stands += held;
    if (bears != 0) {
      moved.add(new Moved(-4 * answer() * bears, hours));
    }
  }

  /** The feel of a turn: a nut gets loose or hard at an end of its travel. */
  private Feel feel(double turns, double bears) {
    NeckFault fault = traits.fault();
    if (fault == NeckFault.FULLY_LOOSE && turns < 0 && bears == 0) {
      return Feel.FREE;
    }
    if (fault == NeckFault.FULLY_TIGHT && turns > 0 && bears == 0) {
      return Feel.STIFF;
    }
    return fault.feel();
  }

  /**
   * Turns lost to slack before a turn moves the rod; slack returns whenever the direction changes.
   */
  private double slackBefore(double turns) {
    return way * turns < 0 ? traits.slackTurns() : slackLeft;
  }

  /** The part of a turn that is left after the slack. */
  private double heldBy(double turns) {
    return Math.copySign(Math.max(0, Math.abs(turns) - slackBefore(turns)), turns);
  }

  /** The part of a turn without slack that loads the rod. */
  private double bears(double held) {
    return traits.fault().bearing(stands + held) - traits.fault().bearing(stands);
  }

  /** Relief lost by tightening a quarter turn, in millimetres. */
  private double answer() {
    return traits.fault() == NeckFault.REVERSED ? -traits.mmPerQuarter() : traits.mmPerQuarter();
  }

  /** The turn that brings the relief to a value at once, slack included; plus tightens. */
  public Turn turnTo(double reliefMm) {
    double turns = (relief() - reliefMm) / traits.mmPerQuarter() / 4;
    return new Turn(turns + Math.copySign(slackBefore(turns), turns));
  }

  /** How often the nut was turned. */
  public int moves() {
    return moves;
  }

  /** The farthest position of the nut from as found, without direction. */
  public Turn mostNet() {
    return new Turn(mostNet);
  }
}
