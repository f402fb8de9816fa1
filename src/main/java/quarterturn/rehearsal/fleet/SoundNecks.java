package quarterturn.rehearsal.fleet;

import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.simulated.FirstGap;

/**
 * The outcomes of sound necks that were each adjusted in three ways. Necks that no turn within the
 * limits can bring into the window (most would need more than a full turn) are counted and left out
 * of the comparison.
 *
 * @param advised outcomes with the program's advice, in which every hand-over is a wrong one
 * @param thumb outcomes with an eighth, then quarters in the right direction
 * @param knowing outcomes with an advisor that knows each neck
 * @param touching those of them whose string touched at first
 * @param outOfReach outcomes of the necks that were left out, with the program's advice
 */
public record SoundNecks(
    Tally advised, Tally thumb, Tally knowing, Tally touching, Tally outOfReach) {
  SoundNecks() {
    this(new Tally(), new Tally(), new Tally(), new Tally(), new Tally());
  }

  void add(Outcome ours, Outcome known) {
    if (!known.settled()) {
      outOfReach.add(ours);
      return;
    }
    advised.add(ours);
    knowing.add(known);
    if (ours.gap() == FirstGap.TOUCHING) {
      touching.add(ours);
    }
  }

  void addThumb(Outcome byThumb, Outcome known) {
    if (known.settled()) {
      thumb.add(byThumb);
    }
  }

  /** The share of all necks whose session ended neither settled nor handed over, 0 to 1. */
  public double unresolved() {
    double unsettled =
        advised.unsettled() * advised.necks() + outOfReach.unsettled() * outOfReach.necks();
    return unsettled / Math.max(1, advised.necks() + outOfReach.necks());
  }

  /**
   * Moves with the program's advice divided by the moves of an advisor that knows the neck; at best
   * 1.
   */
  public double overFloor() {
    return knowing.moves() == 0 ? 1 : advised.moves() / knowing.moves();
  }

  /** The farthest position of any rod from as found, in turns. */
  public double mostTurned() {
    return Math.max(advised.mostNet().turns(), outOfReach.mostNet().turns());
  }
}
