package quarterturn.craft;

import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * One rod turn with the settled readings around it. {@link Turn#NONE} with only a reading after it
 * stands for a rest.
 *
 * @param turn plus tightened
 * @param before relief before it, or null where it was not read
 * @param after relief after it, or null where it was not read
 */
public record Move(Turn turn, @Nullable Bracket before, @Nullable Bracket after) {}
