/**
 * Floor 2: what is believed of a neck from its readings and turns, and the next turn that follows
 * from it. The limits on a turn are given to it, and whether a turn is shown at all is decided by
 * the engine of a session.
 */
@NullMarked
package quarterturn.craft.rod;

import org.jspecify.annotations.NullMarked;
