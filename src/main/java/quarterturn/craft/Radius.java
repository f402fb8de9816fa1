package quarterturn.craft;

import quarterturn.unit.Decimals;
import quarterturn.unit.Digits;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * The radius of a fretboard's top in millimetres, positive infinity where it is flat. {@link
 * #parse} takes {@code 12in}, {@code 305 mm} and {@code flat}.
 */
public record Radius(double mm) {
  /** The radius of a flat board: positive infinity. */
  public static final Radius FLAT = new Radius(Double.POSITIVE_INFINITY);

  private static final double LEAST_MM = 100;
  private static final double MOST_MM = 2000;
  private static final String FLAT_WORD = "flat";

  public Radius {
    if (mm != Double.POSITIVE_INFINITY) {
      if (!(mm >= LEAST_MM && mm <= MOST_MM)) {
        throw new NotUnderstoodException(
            "a fingerboard's radius lies between 100 and 2000 mm, not "
                + Decimals.plain(mm)
                + " mm; write inches as 12in, or flat");
      }
      mm = Decimals.kept(mm);
    }
  }

  /**
   * Reads a typed radius.
   *
   * @throws NotUnderstoodException with what is allowed
   */
  public static Radius parse(String typed) {
    return Digits.plain(typed).equals(FLAT_WORD) ? FLAT : new Radius(Length.parse(typed).mm());
  }

  public boolean flat() {
    return Double.isInfinite(mm);
  }

  /** The radius as {@link #parse} reads it: "304.8 mm", "flat". */
  @Override
  public String toString() {
    return flat() ? FLAT_WORD : Length.mm(mm).toString();
  }
}
