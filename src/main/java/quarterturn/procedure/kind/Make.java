package quarterturn.procedure.kind;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Length;

/**
 * How a kind of instrument is usually made, where a figure needs to know.
 *
 * @param radius of the board's cross-section, or null where it is not known
 * @param spread from the lowest to the highest string at the bridge, or null
 * @param gauges diameters of its usual strings, the lowest first; as many as it has strings, or
 *     none
 * @param bridge how its saddles can be moved
 * @param bassScale scale of the lowest string where the frets fan out, or null
 * @param course how many strings lie side by side as one: 1, or 2 on a twelve-string
 * @param fretless whether the board has only the places of frets
 * @param rod whether it has a rod
 * @param soundHole whether its body has a sound hole
 * @param special windows for a nut, a pickup or a bridge of another kind, by its word
 */
public record Make(
    @Nullable Length radius,
    @Nullable Length spread,
    List<Length> gauges,
    BridgeKind bridge,
    @Nullable Length bassScale,
    int course,
    boolean fretless,
    boolean rod,
    boolean soundHole,
    Map<Quantity, Map<String, Ends>> special) {
  public Make {
    gauges = List.copyOf(gauges);
    special = Map.copyOf(special);
  }

  /** One with a rod, frets square to the strings, and each string by itself. */
  public Make(
      @Nullable Length radius, @Nullable Length spread, List<Length> gauges, BridgeKind bridge) {
    this(radius, spread, gauges, bridge, null, 1, false, true, false, Map.of());
  }
}
