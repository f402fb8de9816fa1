package quarterturn.session;

import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.procedure.Style;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/**
 * How a player strikes a string, by style: estimates of ours, from memory; a player's own stroke is
 * to be calibrated by ear.
 */
final class Touch {
  /** Of the string, from the saddle. */
  private static final double PLACE = 0.14;

  private static final double RETURNS = 0.5;

  private Touch() {}

  static Pluck of(Style style, Scale scale) {
    double newtons =
        switch (style) {
          case LIGHT -> 2.5;
          case MEDIUM -> 4;
          case HARD -> 6;
        };
    return new Pluck(Force.newtons(newtons), Length.mm(PLACE * scale.mm()), RETURNS);
  }
}
