package quarterturn.procedure.kind;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Length;
import quarterturn.unit.Worded;

/**
 * How a kind of instrument is usually made, where a figure needs to know.
 *
 * @param radius of the board's cross-section, or null where it is not known
 * @param spread from the lowest to the highest string at the bridge, or null
 * @param gauges diameters of its usual strings, the lowest first; as many as it has strings, or
 *     none
 * @param saddles whether each string's saddle can be moved
 */
public record Make(
    @Nullable Length radius, @Nullable Length spread, List<Length> gauges, Saddles saddles) {
  public Make {
    gauges = List.copyOf(gauges);
  }

  /** Whether a bridge's saddles can be adjusted. */
  public enum Saddles implements Worded {
    /** Each saddle can be raised and moved by its screws. */
    ADJUSTABLE,
    /** The saddle is one piece that only a repairer works on. */
    FIXED
  }
}
