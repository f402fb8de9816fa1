package quarterturn.craft.rod;

import quarterturn.unit.Turn;

/**
 * A turn to make next, with the reasons.
 *
 * @param turn plus tightens; {@link Turn#NONE} where nothing should be turned
 * @param why one sentence or two that a beginner understands
 * @param numbers the reasons in figures, for a technician; empty where nothing was calculated
 */
public record Advice(Turn turn, String why, String numbers) {
  /** An advice without figures for a technician. */
  public Advice(Turn turn, String why) {
    this(turn, why, "");
  }
}
