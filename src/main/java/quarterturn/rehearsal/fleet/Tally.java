package quarterturn.rehearsal.fleet;

import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.unit.Turn;

/** Sums over many rehearsals, in a fixed amount of memory. */
public final class Tally {
  private static final double MINUTES_A_DAY = 24 * 60.0;

  private final long[] byMoves = new long[Rehearsal.MOST_MOVES + 1];
  private long necks;
  private long settled;
  private long unsettled;
  private long handedOver;
  private long crossings;
  private long minutes;
  private double mostNet;

  void add(Outcome outcome) {
    necks++;
    settled += outcome.settled() ? 1 : 0;
    handedOver += outcome.handedOver() ? 1 : 0;
    unsettled += outcome.id().equals(Outcome.UNSETTLED) ? 1 : 0;
    crossings += outcome.crossings();
    minutes += outcome.minutes();
    mostNet = Math.max(mostNet, outcome.mostNet().turns());
    byMoves[Math.min(Rehearsal.MOST_MOVES, outcome.moves())]++;
  }

  public long necks() {
    return necks;
  }

  /** The share of necks that ended with the relief read in its window, 0 to 1. */
  public double settled() {
    return share(settled);
  }

  /** The share of necks stopped after {@link Rehearsal#MOST_MOVES} turns, 0 to 1. */
  public double unsettled() {
    return share(unsettled);
  }

  /** The share of necks that went to a repairer, 0 to 1. */
  public double handedOver() {
    return share(handedOver);
  }

  /** How often a neck was taken across its window, on average. */
  public double overshoots() {
    return share(crossings);
  }

  /** The share of necks that took at most this many moves, 0 to 1. */
  public double within(int moves) {
    long sum = 0;
    for (int i = 0; i <= Math.min(moves, Rehearsal.MOST_MOVES); i++) {
      sum += byMoves[i];
    }
    return share(sum);
  }

  /** Average number of rod turns for a neck. */
  public double moves() {
    long sum = 0;
    for (int i = 0; i < byMoves.length; i++) {
      sum += i * byMoves[i];
    }
    return share(sum);
  }

  /** The number of moves that is enough for a share of the necks, 0 to 1. */
  public int movesFor(double share) {
    int moves = 0;
    while (moves < Rehearsal.MOST_MOVES && within(moves) < share) {
      moves++;
    }
    return moves;
  }

  /** Average time from the first prompt to the last, in days. */
  public double days() {
    return share(minutes) / MINUTES_A_DAY;
  }

  /** The farthest position of any rod from as found, without direction. */
  public Turn mostNet() {
    return new Turn(mostNet);
  }

  private double share(long count) {
    return necks == 0 ? 0 : (double) count / necks;
  }
}
