/**
 * Floor 5: simulated necks that answer prompts as a person at a bench would, and fleets of them.
 */
@NullMarked
package quarterturn.rehearsal;

import org.jspecify.annotations.NullMarked;
