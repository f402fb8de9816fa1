package quarterturn.craft;

import quarterturn.unit.Turn;

/**
 * What to turn next.
 *
 * @param turn plus tightens; {@link Turn#NONE} where nothing should be turned
 * @param lowMm least relief to expect after it, minus infinity where the string may still touch
 * @param highMm most relief to expect after it
 * @param why one sentence a beginner understands
 */
public record Advice(Turn turn, double lowMm, double highMm, String why) {}
