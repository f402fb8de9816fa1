package quarterturn.rehearsal;

/**
 * Sound necks, each of them adjusted three ways. Those that even one who knows them can't bring
 * into the window within the limits (most would need more than a full turn) are counted and left
 * out of the comparison.
 *
 * @param advised with the program's advice; every hand-over among these is a wrong one
 * @param thumb with an eighth, then quarters the right way
 * @param knowing by one who knows each neck
 * @param outOfReach the necks that were left out, with the program's advice
 */
public record SoundNecks(Tally advised, Tally thumb, Tally knowing, Tally outOfReach) {
  SoundNecks() {
    this(new Tally(), new Tally(), new Tally(), new Tally());
  }

  void add(Outcome ours, Outcome byThumb, Outcome known) {
    if (known.settled()) {
      advised.add(ours);
      thumb.add(byThumb);
      knowing.add(known);
    } else {
      outOfReach.add(ours);
    }
  }

  /** Moves of the advised against the fewest there can be; 1 is as good as knowing. */
  public double overFloor() {
    return knowing.moves() == 0 ? 1 : advised.moves() / knowing.moves();
  }

  /** The farthest any rod was turned from where it was found, in turns. */
  public double mostTurned() {
    return Math.max(advised.mostNet().turns(), outOfReach.mostNet().turns());
  }
}
