package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A hexagon socket by the limits of its width across flats.
 *
 * <p>Metric sockets from 1.5 to 5 mm by public tables of ISO 4762, the larger upper limit where two
 * tables differ. The other metric ones (ISO 4762, ISO 4026) and the inch ones (ASME B18.3) are from
 * memory.
 *
 * @param name as it is called, or as it was measured
 */
public record HexSocket(String name, Length least, Length most) {
  private static final List<HexSocket> STANDARD =
      List.of(
          metric("0.7", 0.711, 0.724),
          metric("0.9", 0.889, 0.902),
          metric("1.3", 1.270, 1.295),
          metric("1.5", 1.52, 1.56),
          metric("2", 2.02, 2.06),
          metric("2.5", 2.52, 2.58),
          metric("3", 3.02, 3.08),
          metric("4", 4.02, 4.095),
          metric("5", 5.02, 5.14),
          metric("6", 6.02, 6.14),
          metric("8", 8.025, 8.175),
          inch(".028", 0.0280, 0.0285),
          inch(".035", 0.0350, 0.0355),
          inch(".050", 0.0500, 0.0510),
          inch("1/16", 0.0625, 0.0635),
          inch("5/64", 0.0781, 0.0791),
          inch("3/32", 0.0937, 0.0952),
          inch("7/64", 0.1094, 0.1111),
          inch("1/8", 0.1250, 0.1270),
          inch("9/64", 0.1406, 0.1426),
          inch("5/32", 0.1562, 0.1587),
          inch("3/16", 0.1875, 0.1900),
          inch("7/32", 0.2187, 0.2217),
          inch("1/4", 0.2500, 0.2530),
          inch("5/16", 0.3125, 0.3160));

  public HexSocket {
    if (!(least.mm() > 0 && least.mm() <= most.mm())) {
      throw new NotUnderstoodException("a socket's width across flats must be above zero");
    }
  }

  private static HexSocket metric(String name, double least, double most) {
    return new HexSocket(name + "mm", Length.mm(least), Length.mm(most));
  }

  private static HexSocket inch(String name, double least, double most) {
    return new HexSocket(name + "in", Length.inches(least), Length.inches(most));
  }

  /** The standard socket whose limits lie nearest to a measured width; of two, the larger. */
  public static HexSocket nearest(Length acrossFlats) {
    HexSocket nearest = STANDARD.get(0);
    for (HexSocket socket : STANDARD) {
      double nearer = nearest.offBy(acrossFlats) - socket.offBy(acrossFlats);
      if (nearer > 0 || (nearer == 0 && socket.least.mm() > nearest.least.mm())) {
        nearest = socket;
      }
    }
    return nearest;
  }

  /** How far a width lies outside the limits, in millimetres. */
  private double offBy(Length width) {
    return Math.max(0, Math.max(least.mm() - width.mm(), width.mm() - most.mm()));
  }

  /** A socket that was measured, without limits around it. */
  public static HexSocket measured(Length acrossFlats) {
    return new HexSocket(acrossFlats.toString(), acrossFlats, acrossFlats);
  }

  /**
   * The standard socket of a nominal size, such as {@code 5mm} or {@code 3/16in}.
   *
   * @throws NotUnderstoodException with the sizes that there are
   */
  public static HexSocket parse(String typed) {
    HexKey key = HexKey.parse(typed);
    return STANDARD.stream()
        .filter(socket -> socket.name.equals(key.name()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no socket of " + key.name()));
  }
}
