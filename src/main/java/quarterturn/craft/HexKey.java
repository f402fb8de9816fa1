package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A hexagon key by the limits of its width across flats.
 *
 * <p>Metric keys: ISO 2936, by its national adoption JIS B 4648:2008. Inch keys: ASME B18.3-2012. A
 * metric 0.7, 0.9 or 1.3 mm key is the inch .028, .035 or .050 key within limits.
 *
 * @param name as it is sold, such as {@code 5mm} or {@code 3/16in}
 * @param nominal what the name says
 */
public record HexKey(String name, Length nominal, Length least, Length most) {
  /** Every key that is known, metric first, small to large. */
  public static final List<HexKey> ALL =
      List.of(
          metric("0.7", 0.70, 0.71),
          metric("0.9", 0.88, 0.89),
          metric("1.3", 1.24, 1.27),
          metric("1.5", 1.48, 1.50),
          metric("2", 1.96, 2.00),
          metric("2.5", 2.46, 2.50),
          metric("3", 2.96, 3.00),
          metric("4", 3.95, 4.00),
          metric("5", 4.95, 5.00),
          metric("6", 5.95, 6.00),
          metric("8", 7.94, 8.00),
          inch(".028", 0.028, 0.0275, 0.0280),
          inch(".035", 0.035, 0.0345, 0.0350),
          inch(".050", 0.050, 0.0490, 0.0500),
          inch("1/16", 1 / 16.0, 0.0615, 0.0625),
          inch("5/64", 5 / 64.0, 0.0771, 0.0781),
          inch("3/32", 3 / 32.0, 0.0927, 0.0937),
          inch("7/64", 7 / 64.0, 0.1079, 0.1094),
          inch("1/8", 1 / 8.0, 0.1235, 0.1250),
          inch("9/64", 9 / 64.0, 0.1391, 0.1406),
          inch("5/32", 5 / 32.0, 0.1547, 0.1562),
          inch("3/16", 3 / 16.0, 0.1860, 0.1875),
          inch("7/32", 7 / 32.0, 0.2172, 0.2187),
          inch("1/4", 1 / 4.0, 0.2485, 0.2500),
          inch("5/16", 5 / 16.0, 0.3110, 0.3125));

  /** How far a typed size may be off; no two nominal sizes lie this close together. */
  private static final double NEAR_MM = 0.002;

  private static HexKey metric(String name, double least, double most) {
    double nominal = Double.parseDouble(name);
    return new HexKey(name + "mm", Length.mm(nominal), Length.mm(least), Length.mm(most));
  }

  private static HexKey inch(String name, double nominal, double least, double most) {
    return new HexKey(
        name + "in", Length.inches(nominal), Length.inches(least), Length.inches(most));
  }

  /**
   * The key of a nominal size, such as {@code 5mm} or {@code 3/16in}.
   *
   * @throws NotUnderstoodException with the sizes that there are
   */
  public static HexKey parse(String typed) {
    Length size = Length.parse(typed);
    return ALL.stream()
        .filter(key -> Math.abs(key.nominal.mm() - size.mm()) <= NEAR_MM)
        .findFirst()
        .orElseThrow(
            () ->
                new NotUnderstoodException(
                    "there is no key of "
                        + Printable.of(typed.strip())
                        + "; there are "
                        + String.join(", ", ALL.stream().map(HexKey::name).toList())));
  }
}
