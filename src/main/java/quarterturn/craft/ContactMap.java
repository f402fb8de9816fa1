package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.NotUnderstoodException;

/**
 * Where a string would strike the frets: for the open string (k = 0) and every stopped fret k, and
 * every fret n beyond, the clearance of the string at rest less the depth of the stroke there
 * ({@link StringLine}, {@link Pluck}). A negative margin means contact, which is heard as buzz.
 */
public final class ContactMap {
  /**
   * Margins in millimetres that differ by less count as equal; of these the one nearest the nut is
   * named.
   */
  private static final double SAME_MM = 1e-9;

  private final int last;
  private final double[][] margins;
  private final int stoppedAt;
  private final int overFret;
  private final int restsOn;
  private final String rests;

  private ContactMap(
      int last, double[][] margins, int stoppedAt, int overFret, int restsOn, String rests) {
    this.last = last;
    this.margins = margins;
    this.stoppedAt = stoppedAt;
    this.overFret = overFret;
    this.restsOn = restsOn;
    this.rests = rests;
  }

  /**
   * The map of one string.
   *
   * @param last the last fret of the board, 2 or more
   * @throws NotUnderstoodException where a stopped fret leaves the stroke's place no string
   */
  public static ContactMap of(StringLine line, Force tension, Pluck pluck, int last) {
    if (last < 2 || last > Scale.MOST_FRETS) {
      throw new NotUnderstoodException(
          "the last fret must lie between 2 and " + Scale.MOST_FRETS + ", not " + last);
    }
    Scale scale = line.neck().scale();
    double[] at = new double[last + 1];
    double[] top = new double[last + 1];
    for (int n = 0; n <= last; n++) {
      at[n] = scale.fretMm(n);
      top[n] = line.neck().fretTopMm(n);
    }
    double[][] margins = new double[last + 1][last + 1];
    double least = Double.POSITIVE_INFINITY;
    int stoppedAt = 0;
    int overFret = 1;
    int restsOn = 0;
    String rests = "";
    for (int k = 0; k < last; k++) {
      double speaking = scale.mm() - at[k];
      double amplitude = pluck.amplitudeMm(tension, speaking);
      double stop = k == 0 ? top[0] + line.nutHeight().mm() : top[k];
      double slope = (line.saddle().mm() - stop) / speaking;
      for (int n = k + 1; n <= last; n++) {
        double u = at[n] - at[k];
        double rest = stop + slope * u - top[n];
        if (restsOn == 0 && rest <= SAME_MM) {
          restsOn = n;
          String which = k == 0 ? "the open string" : "the string stopped at fret " + k;
          rests = which + " lies on fret " + n;
        }
        double margin = rest - pluck.depthMm(amplitude, speaking, u);
        margins[k][n] = margin;
        if (margin < least - SAME_MM) {
          least = margin;
          stoppedAt = k;
          overFret = n;
        }
      }
    }
    return new ContactMap(last, margins, stoppedAt, overFret, restsOn, rests);
  }

  /** The last fret of the board. */
  public int last() {
    return last;
  }

  /**
   * The margin stopped at fret {@code k}, 0 for the open string, over fret {@code n}, {@code 0 <= k
   * < n}: clearance less depth, in millimetres.
   */
  public double marginMm(int k, int n) {
    if (!(k >= 0 && k < n && n <= last)) {
      throw new IllegalArgumentException("no margin for fret " + n + " stopped at " + k);
    }
    return margins[k][n];
  }

  /** The smallest margin of all, in millimetres. */
  public double leastMm() {
    return margins[stoppedAt][overFret];
  }

  /** The fret that is stopped where the margin is smallest; 0 for the open string. */
  public int stoppedAt() {
    return stoppedAt;
  }

  /** The fret that is nearest to being struck. */
  public int overFret() {
    return overFret;
  }

  /** Where the margin is smallest: "stopped at fret 2, over fret 5", "open, over fret 1". */
  public String where() {
    return (stoppedAt == 0 ? "open" : "stopped at fret " + stoppedAt) + ", over fret " + overFret;
  }

  /** The fret on which the string lies without any stroke, of several the first; 0 for none. */
  public int restsOn() {
    return restsOn;
  }

  /** What lies on a fret without any stroke: "the open string lies on fret 2"; empty for none. */
  public String rests() {
    return rests;
  }
}
