package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A hexagon key by the limits of its width across flats. {@link HexSize} has those that are known.
 *
 * @param name as it is sold, such as {@code 5mm} or {@code 3/16in}
 * @param nominal what the name says
 */
public record HexKey(String name, Length nominal, Length least, Length most) {
  /** Every key that is known, metric first, small to large. */
  public static final List<HexKey> ALL = HexSize.ALL.stream().map(HexSize::key).toList();

  /** How far a typed size may be off; no two nominal sizes lie this close together. */
  private static final double NEAR_MM = 0.002;

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
