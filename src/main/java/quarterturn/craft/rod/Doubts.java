package quarterturn.craft.rod;

/**
 * The chances that a rod does not work as it should, before a session's first reading.
 *
 * @param dead that it does nothing
 * @param reversed that it works the other way round
 * @param loose that it stands fully loose
 * @param tight that it stands fully tight
 */
record Doubts(double dead, double reversed, double loose, double tight) {
  /** Chances for a neck never seen to answer; estimates. */
  private static final Doubts UNSEEN = new Doubts(0.02, 0.01, 0.02, 0.02);

  /**
   * Factor of the chances of a dead and a reversed rod on a neck that has answered before; an
   * estimate.
   */
  private static final double SINCE_ANSWERED = 0.1;

  /** The least chance of a working rod, which may have been seen to since. */
  private static final double LEAST_WORKING = 0.1;

  /** The usual doubts of a rod of which this is known. */
  static Doubts of(Known known) {
    double since = known.answered() ? SINCE_ANSWERED : 1;
    return new Doubts(since * UNSEEN.dead, since * UNSEEN.reversed, UNSEEN.loose, UNSEEN.tight);
  }

  /** What a session leaves to doubt, at least what is usual: a rod may break between two. */
  static Doubts after(Belief belief, Known known) {
    Doubts usual = of(known);
    Doubts left =
        new Doubts(
            Math.max(usual.dead, belief.chance(RodState.DEAD)),
            Math.max(usual.reversed, belief.chance(RodState.REVERSED)),
            Math.max(usual.loose, belief.chance(RodState.FULLY_LOOSE)),
            Math.max(usual.tight, belief.chance(RodState.FULLY_TIGHT)));
    double less = Math.min(1, (1 - LEAST_WORKING) / (1 - left.working()));
    return new Doubts(less * left.dead, less * left.reversed, less * left.loose, less * left.tight);
  }

  double working() {
    return 1 - dead - reversed - loose - tight;
  }
}
