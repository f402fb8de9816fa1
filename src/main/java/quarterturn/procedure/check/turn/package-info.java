/**
 * Floor 3: the rules about turning the rod: what comes before a turn, what between two, and how far
 * it may go. Rules about anything else are in {@code check}.
 */
@NullMarked
package quarterturn.procedure.check.turn;

import org.jspecify.annotations.NullMarked;
