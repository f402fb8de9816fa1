package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Length;

/**
 * A nominal size of hexagon keys and sockets, with the limits of both across flats.
 *
 * <p>Metric keys: ISO 2936, by its national adoption JIS B 4648:2008. Inch keys: ASME B18.3-2012. A
 * metric 0.7, 0.9 or 1.3 mm key is the inch .028, .035 or .050 key within limits.
 *
 * <p>Metric sockets from 1.5 to 8 mm by public tables of ISO 4762 and ISO 4026 to 4028, the larger
 * upper limit where tables differ: older ones end the 1.5 mm socket at 1.56 and the 2 mm one at
 * 2.06 mm, newer ones at 1.58 and 2.08. Those of 0.7 to 1.3 mm (ISO 4026; tables differ by up to
 * 0.011 mm) and the inch ones (ASME B18.3) are from memory.
 *
 * @param name as it is sold, such as {@code 5mm} or {@code 3/16in}
 * @param unitMm what the other figures are counted in, in millimetres
 * @param nominal what the name says
 */
record HexSize(
    String name,
    double unitMm,
    double nominal,
    double leastKey,
    double mostKey,
    double leastSocket,
    double mostSocket) {
  /**
   * Every size that is known, metric first, small to large: the key's limits, then the socket's.
   */
  static final List<HexSize> ALL =
      List.of(
          metric("0.7", 0.70, 0.71, 0.711, 0.724),
          metric("0.9", 0.88, 0.89, 0.889, 0.902),
          metric("1.3", 1.24, 1.27, 1.270, 1.295),
          metric("1.5", 1.48, 1.50, 1.52, 1.58),
          metric("2", 1.96, 2.00, 2.02, 2.08),
          metric("2.5", 2.46, 2.50, 2.52, 2.58),
          metric("3", 2.96, 3.00, 3.02, 3.08),
          metric("4", 3.95, 4.00, 4.02, 4.095),
          metric("5", 4.95, 5.00, 5.02, 5.14),
          metric("6", 5.95, 6.00, 6.02, 6.14),
          metric("8", 7.94, 8.00, 8.025, 8.175),
          inch(".028", 0.028, 0.0275, 0.0280, 0.0280, 0.0285),
          inch(".035", 0.035, 0.0345, 0.0350, 0.0350, 0.0355),
          inch(".050", 0.050, 0.0490, 0.0500, 0.0500, 0.0510),
          inch("1/16", 1 / 16.0, 0.0615, 0.0625, 0.0625, 0.0635),
          inch("5/64", 5 / 64.0, 0.0771, 0.0781, 0.0781, 0.0791),
          inch("3/32", 3 / 32.0, 0.0927, 0.0937, 0.0937, 0.0952),
          inch("7/64", 7 / 64.0, 0.1079, 0.1094, 0.1094, 0.1111),
          inch("1/8", 1 / 8.0, 0.1235, 0.1250, 0.1250, 0.1270),
          inch("9/64", 9 / 64.0, 0.1391, 0.1406, 0.1406, 0.1426),
          inch("5/32", 5 / 32.0, 0.1547, 0.1562, 0.1562, 0.1587),
          inch("3/16", 3 / 16.0, 0.1860, 0.1875, 0.1875, 0.1900),
          inch("7/32", 7 / 32.0, 0.2172, 0.2187, 0.2187, 0.2217),
          inch("1/4", 1 / 4.0, 0.2485, 0.2500, 0.2500, 0.2530),
          inch("5/16", 5 / 16.0, 0.3110, 0.3125, 0.3125, 0.3160));

  private static HexSize metric(
      String name, double leastKey, double mostKey, double leastSocket, double mostSocket) {
    double nominal = Double.parseDouble(name);
    return new HexSize(name + "mm", 1, nominal, leastKey, mostKey, leastSocket, mostSocket);
  }

  private static HexSize inch(
      String name,
      double nominal,
      double leastKey,
      double mostKey,
      double leastSocket,
      double mostSocket) {
    return new HexSize(
        name + "in", Length.MM_PER_INCH, nominal, leastKey, mostKey, leastSocket, mostSocket);
  }

  HexKey key() {
    return new HexKey(name, mm(nominal), mm(leastKey), mm(mostKey));
  }

  HexSocket socket() {
    return new HexSocket(name, mm(leastSocket), mm(mostSocket));
  }

  private Length mm(double units) {
    return Length.mm(units * unitMm);
  }
}
