/**
 * Floor 5: simulated instruments that answer prompts as a person at a bench would, and fleets of
 * them. How simulated sessions cover a procedure's ways is in {@code cover}.
 */
@NullMarked
package quarterturn.rehearsal;

import org.jspecify.annotations.NullMarked;
