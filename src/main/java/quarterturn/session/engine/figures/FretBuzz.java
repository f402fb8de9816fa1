package quarterturn.session.engine.figures;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.BuzzCure;
import quarterturn.craft.ContactMap;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/**
 * Calculates where the lowest string meets the frets under a player's stroke. The stroke is as hard
 * as an instrument in the middle of the style's windows just clears at every fret, so that nobody's
 * force has to be guessed. The place of the stroke and the share that returns are estimates.
 */
public record FretBuzz(Kind kind, Style style) {
  /** Distance of the stroke from the saddle as a share of the string's length. */
  private static final double PLACE = 0.14;

  private static final double RETURNS = 0.5;
  private static final double MOST_NEWTONS = 50;
  private static final int HALVINGS = 24;

  /** Height of the string over fret 1 at the nut; an estimate. */
  private static final Length NUT_HEIGHT = Length.mm(0.5);

  /**
   * The contact of string and frets and what would clear them, or null where it can't be
   * calculated.
   *
   * @param relief the reading of the relief, or null
   * @param action at fret 12 in millimetres, or null
   */
  public @Nullable BuzzCure cure(@Nullable Bracket relief, @Nullable Double action) {
    boolean known = !kind.make().gauges().isEmpty() && kind.windows().containsKey(Quantity.ACTION);
    known &= !kind.make().fretless();
    if (relief == null || action == null || !known) {
      return null;
    }
    return BuzzCure.of(
        new Scale(kind.scale(0)),
        kind.jointFret(),
        Held.at(kind.jointFret(), kind.readAt()),
        relief.noGap() ? 0 : relief.middleMm(),
        kind.target(style).window().highMm(),
        NUT_HEIGHT,
        Length.mm(action),
        StringSet.lowest(kind),
        stroke(),
        kind.frets());
  }

  private Pluck stroke() {
    Scale scale = new Scale(kind.scale(0));
    Held held = Held.at(kind.jointFret(), kind.readAt());
    double relief = kind.target(style).window().middleMm();
    double action = kind.target(Quantity.ACTION, style, 0).window().middleMm();
    Neck neck = Neck.uniform(scale, kind.jointFret(), Length.mm(relief), held);
    StringLine line = StringLine.withAction(neck, NUT_HEIGHT, Quantity.OCTAVE, Length.mm(action));
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
    return new Pluck(
        Force.newtons(newtons), Length.mm(PLACE * scale.mm()), Pluck.Way.PUSHED, RETURNS);
  }

  /** Where the string comes nearest to a fret or strikes it, and what would clear it, in words. */
  public String words(BuzzCure cure) {
    ContactMap found = cure.found();
    String map =
        "For a "
            + style.word()
            + " touch, the lowest string "
            + (found.leastMm() >= 0
                ? "should clear every fret; it comes nearest "
                : "should strike; deepest ")
            + found.where()
            + ", by "
            + mm(Math.abs(found.leastMm()))
            + ". ";
    String amount = mm(cure.amount().mm());
    String cheap =
        switch (cure.way()) {
          case NOTHING -> "So a buzz has another cause: a fret, the nut, a loose part";
          case RELIEF ->
              "The least that would clear it is " + amount + " more relief, within the range";
          case SADDLE ->
              "The least that would clear it is "
                  + amount
                  + " more action at fret 12; more relief within the range does not";
          case NEITHER -> "Neither relief nor saddle clears it within reason: play softer, or ask";
        };
    return map
        + cheap
        + ". Reckoned for an ideal string, even frets and a stroke that just clears the middle of"
        + " the ranges";
  }

  private static String mm(double mm) {
    return Decimals.print(mm, 2) + " mm";
  }
}
