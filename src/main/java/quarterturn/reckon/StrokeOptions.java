package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** A player's stroke on a string. */
final class StrokeOptions {
  static final String ASSUMES =
      "an ideal string, drawn square to the fingerboard and let go, over a neck that bends evenly"
          + " up to its joint; no damping, no stiffness. Pushed toward the fingerboard, a string"
          + " comes down deepest where it was struck; pulled away from it, as far from the stop as"
          + " the stroke is from the saddle. The returning share is how much of it comes down in"
          + " the other of the two shapes, because real strokes are slanting. It is this player's"
          + " own constant: nobody can look it up, calibrate it by ear against a reading.";

  @Option(
      names = "--tension",
      required = true,
      paramLabel = "FORCE",
      description = "The string's pull, such as 180N (see: reckon tension).")
  private Force tension = Force.newtons(0);

  @Option(
      names = "--pluck-force",
      required = true,
      paramLabel = "FORCE",
      description = "Of the stroke, square to the fingerboard, such as 2N.")
  private Force force = Force.newtons(0);

  @Option(
      names = "--pluck-at",
      required = true,
      paramLabel = "LENGTH",
      description = "Where the stroke falls, from the saddle.")
  private Length at = Length.mm(0);

  @Option(
      names = "--stroke",
      paramLabel = "WAY",
      description = "pushed toward the fingerboard, or pulled away from it; pushed unless given.")
  private Pluck.Way way = Pluck.Way.PUSHED;

  @Option(
      names = "--return-share",
      required = true,
      paramLabel = "B",
      description =
          "The returning share, 0 to 1: how much of a pushed stroke comes down as a pulled one"
              + " does, or the other way round; 0 for a stroke square to the fingerboard.")
  private double share;

  Force tension() {
    if (!(tension.newtons() > 0)) {
      throw new NotUnderstoodException("--tension: must be above zero, not " + tension);
    }
    return tension;
  }

  /** The stroke, checked to fall on the string that is stopped at the last fret. */
  Pluck pluck(Scale scale, int lastFret) {
    if (force.newtons() < 0) {
      throw new NotUnderstoodException("--pluck-force: can't be negative, not " + force);
    }
    if (!(share >= 0 && share <= 1)) {
      throw new NotUnderstoodException(
          "--return-share: must lie between 0 and 1, not " + Decimals.plain(share));
    }
    Checked.above0("--pluck-at", at);
    double shortest = scale.speakingMm(lastFret - 1);
    if (!(at.mm() < shortest)) {
      throw new NotUnderstoodException(
          "--pluck-at: stopped at fret "
              + (lastFret - 1)
              + " the string is only "
              + Decimals.print(shortest, 1)
              + " mm long; give less than that, or a smaller --last-fret");
    }
    return new Pluck(force, at, way, share);
  }
}
