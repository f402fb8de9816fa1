package quarterturn.rehearsal;

/**
 * Sound necks, each of them adjusted three ways. Those that even one who knows them can't bring
 * into the window within the limits (most would need more than a full turn) are counted and left
 * out of the comparison.
 */
public final class SoundNecks {
  private final Tally advised = new Tally();
  private final Tally thumb = new Tally();
  private final Tally knowing = new Tally();
  private final Tally outOfReach = new Tally();

  void add(Outcome ours, Outcome byThumb, Outcome known) {
    if (known.settled()) {
      advised.add(ours);
      thumb.add(byThumb);
      knowing.add(known);
    } else {
      outOfReach.add(ours);
    }
  }

  /** With the program's advice. Every hand-over among these is a wrong one. */
  public Tally advised() {
    return advised;
  }

  /** With an eighth, then quarters the right way. */
  public Tally thumb() {
    return thumb;
  }

  /** By one who knows each neck. */
  public Tally knowing() {
    return knowing;
  }

  /** The necks that were left out, with the program's advice. */
  public Tally outOfReach() {
    return outOfReach;
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
