package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/**
 * What the saddle must do for a wanted change of action: {@code change / (1 - 2^(-n/12))}, twice
 * the change at fret 12. By similar triangles, the open string being straight and the neck left
 * alone.
 */
public final class SaddleHeight {
  private SaddleHeight() {}

  /**
   * The saddle's rise for a change of action at a fret; plus is up.
   *
   * @param fret 1 or more
   */
  public static Length change(Length action, int fret) {
    return Length.mm(action.mm() / share(fret));
  }

  /** How much of a saddle's rise arrives over a fret where action can be read. */
  static double share(int fret) {
    if (fret < 1) {
      throw new NotUnderstoodException("action is read at fret 1 or beyond, not at " + fret);
    }
    return Scale.share(fret);
  }

  /** Turns of a height screw for a saddle's change; both screws of a saddle turn alike. */
  public static Turn turns(Length change, ScrewThread thread) {
    return new Turn(change.mm() / thread.pitch().mm());
  }
}
