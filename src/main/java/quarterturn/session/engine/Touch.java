package quarterturn.session.engine;

import quarterturn.craft.ContactMap;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/**
 * How a player of a style strikes the lowest string: as hard as an instrument in the middle of that
 * style's windows just clears at every fret. So nobody's force has to be guessed. The place of the
 * stroke and the share that returns are estimates.
 */
final class Touch {
  /** Place of the stroke as a share of the string, from the saddle. */
  private static final double PLACE = 0.14;

  private static final double RETURNS = 0.5;
  private static final double MOST_NEWTONS = 50;
  private static final int HALVINGS = 24;

  private Touch() {}

  static Pluck of(Kind kind, Style style, Length nutHeight) {
    Scale scale = new Scale(kind.scale());
    Held held = Held.at(kind.jointFret(), kind.readAt());
    double relief = kind.target(style).window().middleMm();
    double action = kind.target(Quantity.ACTION, style, 0).window().middleMm();
    Neck neck = Neck.uniform(scale, kind.jointFret(), Length.mm(relief), held);
    StringLine line = StringLine.withAction(neck, nutHeight, Quantity.OCTAVE, Length.mm(action));
    Force tension = StringSet.lowest(kind);
    double clears = 0;
    double strikes = MOST_NEWTONS;
    for (int i = 0; i < HALVINGS; i++) {
      double newtons = (clears + strikes) / 2;
      ContactMap map = ContactMap.of(line, tension, pluck(newtons, scale), kind.frets());
      if (map.leastMm() >= 0) {
        clears = newtons;
      } else {
        strikes = newtons;
      }
    }
    return pluck(clears, scale);
  }

  private static Pluck pluck(double newtons, Scale scale) {
    return new Pluck(Force.newtons(newtons), Length.mm(PLACE * scale.mm()), RETURNS);
  }
}
