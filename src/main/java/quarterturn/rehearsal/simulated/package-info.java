/**
 * Floor 5: simulated necks and instruments: how they are made, drawn at random, and answer a turn.
 * Who reads and turns them is in {@code rehearsal}.
 */
@NullMarked
package quarterturn.rehearsal.simulated;

import org.jspecify.annotations.NullMarked;
