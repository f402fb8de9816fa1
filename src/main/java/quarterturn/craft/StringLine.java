package quarterturn.craft;

import quarterturn.unit.Length;

/**
 * A string over a neck: straight from its nut slot, which the bend carries up, to the saddle, which
 * is fixed to the body.
 *
 * <p>Heights in millimetres from the body's plane. A height over a fret that comes out negative
 * means that the string would lie on the frets before it: it touches.
 *
 * @param nutHeight bottom of the nut slot above the plane of the fret tops
 * @param saddle the string's height at the saddle above the body's plane
 */
public record StringLine(Neck neck, Length nutHeight, Length saddle) {
  /** The string whose action at {@code fret} is {@code action}: the saddle is found for it. */
  public static StringLine withAction(Neck neck, Length nutHeight, int fret, Length action) {
    double share = SaddleHeight.share(fret);
    double nut = neck.fretTopMm(0) + nutHeight.mm();
    double wanted = action.mm() + neck.fretTopMm(fret);
    return new StringLine(neck, nutHeight, Length.mm((wanted - nut * (1 - share)) / share));
  }

  /** Action at fret {@code n} in millimetres: how high the open string stands above its top. */
  public double openMm(int n) {
    double share = Scale.share(n);
    double nut = neck.fretTopMm(0) + nutHeight.mm();
    return nut * (1 - share) + saddle.mm() * share - neck.fretTopMm(n);
  }

  /**
   * How much the action at a fret changes for each millimetre of relief, read as {@code held}, with
   * saddle and nut slot left alone. Near 2 at fret 12. All lengths cancel: the frets alone set it.
   */
  public static double actionPerRelief(Neck neck, int fret, Held held) {
    Neck unit = neck.bentBy(1);
    double rise = unit.fretTopMm(0) * (1 - Scale.share(fret)) - unit.fretTopMm(fret);
    return rise / unit.gapWithinBow(held);
  }
}
