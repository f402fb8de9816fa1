package quarterturn.craft;

import quarterturn.unit.Decimals;

/** The range of acceptable readings, in millimetres, both ends included. */
public record Window(double lowMm, double highMm) {
  public Window {
    if (!(lowMm < highMm)) {
      throw new IllegalArgumentException("a range's low end must lie below its high end");
    }
  }

  public double middleMm() {
    return (lowMm + highMm) / 2;
  }

  /** The window in words: "0.30 to 0.45 mm". */
  @Override
  public String toString() {
    return Decimals.print(lowMm, 2) + " to " + Decimals.print(highMm, 2) + " mm";
  }
}
