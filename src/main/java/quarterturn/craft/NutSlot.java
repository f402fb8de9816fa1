package quarterturn.craft;

import quarterturn.unit.Length;

/**
 * What the floor of a nut slot must do for a wanted change of the gap over a fret, with the string
 * pressed down on a fret beyond it. By similar triangles, the string being straight from the slot
 * to the fret that it lies on: of the slot's height over the line of the fret tops a share of
 * {@code 1 - x_n / x_m} is left over fret n, x being the frets' distances from the nut. Over fret 1
 * with the string on fret 2 that is 0.486, whatever the scale. A relief of 0.30 mm changes such a
 * gap by no more than 0.012 mm, which is left out (derived).
 */
public final class NutSlot {
  private NutSlot() {}

  /**
   * The slot's change of height; plus is up.
   *
   * @param gap the wanted change of the gap
   * @param fret where the gap is, 1 or more
   * @param lying the fret that the string lies on, beyond it
   */
  public static Length change(Length gap, int fret, int lying) {
    return Length.mm(gap.mm() / share(fret, lying));
  }

  /** How much of a slot's height over the fret tops is left over a fret. */
  public static double share(int fret, int lying) {
    return 1 - Scale.share(fret) / Scale.share(lying);
  }
}
