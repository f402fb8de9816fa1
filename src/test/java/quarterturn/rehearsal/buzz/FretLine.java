package quarterturn.rehearsal.buzz;

import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/**
 * One string over its frets, whose tops may stand anywhere: a taut string lies on the upper hull of
 * what is under it. Heights in millimetres from the body's plane.
 *
 * @param top of each fret under this string; the entry 0 is the plane of the fret tops at the nut
 * @param nut height of the slot's floor above that plane
 * @param saddle height of the string at the saddle
 */
record FretLine(Scale scale, double[] top, double nut, double saddle) {
  /** Any tension: only its ratio to the stroke's force counts. */
  private static final Force TENSION = Force.newtons(100);

  int last() {
    return top.length - 1;
  }

  /** The gap over fret {@code over} with the string held down on two frets; minus where it lies. */
  double gapMm(int low, int high, int over) {
    return hullMm(low, top[low], scale.fretMm(high), top[high], over) - top[over];
  }

  /** The gap over fret 1 with the string pressed between frets 2 and 3. */
  double clearanceMm() {
    return hullMm(0, top[0] + nut, scale.fretMm(2), top[2], 1) - top[1];
  }

  /** The height of the open string over fret 12. */
  double actionMm() {
    double share = Scale.share(12);
    return (top[0] + nut) * (1 - share) + saddle * share - top[12];
  }

  /**
   * The height over a fret of a string that is taut between two places, lying on what is between.
   */
  private double hullMm(int from, double start, double endAt, double end, int over) {
    double x = scale.fretMm(over);
    double best = Double.NEGATIVE_INFINITY;
    for (int a = from; a < over; a++) {
      double ya = a == from ? start : top[a];
      double xa = scale.fretMm(a);
      for (int b = over + 1; scale.fretMm(b) <= endAt + 1e-9; b++) {
        double xb = scale.fretMm(b);
        double yb = xb >= endAt - 1e-9 ? end : top[b];
        best = Math.max(best, ya + (yb - ya) * (x - xa) / (xb - xa));
      }
    }
    return best;
  }

  /**
   * The depth in millimetres by which a stroke strikes fret {@code over}, stopped at {@code at}.
   */
  double strikesMm(int at, int over, Pluck stroke) {
    double speaking = scale.speakingMm(at);
    double stop = at == 0 ? top[0] + nut : top[at];
    double along = scale.fretMm(over) - scale.fretMm(at);
    double rest = stop + (saddle - stop) * along / speaking - top[over];
    return stroke.depthMm(stroke.amplitudeMm(TENSION, speaking), speaking, along) - rest;
  }

  /** The fret that is struck deepest, stopped at {@code at}; 0 where none is by more than that. */
  int struck(int at, Pluck stroke, double audibleMm) {
    int fret = 0;
    double deepest = audibleMm;
    for (int over = at + 1; over <= last(); over++) {
      double depth = strikesMm(at, over, stroke);
      fret = depth > deepest ? over : fret;
      deepest = Math.max(deepest, depth);
    }
    return fret;
  }

  /** The stroke that this string just clears at every fret. */
  Pluck clearing() {
    double clears = 0;
    double strikes = 50;
    for (int i = 0; i < 40; i++) {
      double newtons = (clears + strikes) / 2;
      if (strikesAnywhere(stroke(newtons))) {
        strikes = newtons;
      } else {
        clears = newtons;
      }
    }
    return stroke(clears);
  }

  /** A stroke as hard as another, times a factor. */
  Pluck harder(Pluck stroke, double factor) {
    return stroke(stroke.force().newtons() * factor);
  }

  private boolean strikesAnywhere(Pluck stroke) {
    for (int at = 0; at < last(); at++) {
      if (struck(at, stroke, 0) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Pushed at a seventh of the scale from the saddle, half of it coming back: an estimate. */
  private Pluck stroke(double newtons) {
    return new Pluck(Force.newtons(newtons), Length.mm(0.14 * scale.mm()), Pluck.Way.PUSHED, 0.5);
  }
}
