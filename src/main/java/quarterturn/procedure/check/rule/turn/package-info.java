/**
 * Floor 3: the rules about turning the rod: what comes before a turn, what between two, and how far
 * it may go. Rules about anything else are in {@code rule}.
 */
@NullMarked
package quarterturn.procedure.check.rule.turn;

import org.jspecify.annotations.NullMarked;
