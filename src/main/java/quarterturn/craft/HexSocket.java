package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A hexagon socket by the limits of its width across flats. {@link HexSize} has the standard ones.
 *
 * @param name as it is called, or as it was measured
 */
public record HexSocket(String name, Length least, Length most) {
  private static final List<HexSocket> STANDARD =
      HexSize.ALL.stream().map(HexSize::socket).toList();

  public HexSocket {
    if (!(least.mm() > 0 && least.mm() <= most.mm())) {
      throw new NotUnderstoodException("a socket's width across flats must be above zero");
    }
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
