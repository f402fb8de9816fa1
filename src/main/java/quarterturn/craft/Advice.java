package quarterturn.craft;

import quarterturn.unit.Turn;

/**
 * What to turn next.
 *
 * @param turn plus tightens; {@link Turn#NONE} where nothing should be turned
 * @param why one sentence or two that a beginner understands
 */
public record Advice(Turn turn, String why) {}
