/**
 * Floor 5: simulated instruments that answer prompts as a person at a bench would, and fleets of
 * them. What simulated sessions cover of a procedure is in {@code cover}.
 */
@NullMarked
package quarterturn.rehearsal;

import org.jspecify.annotations.NullMarked;
