/**
 * Floor 5: whole lives of simulated instruments, over many sessions and mishaps, whose rods' true
 * histories are held to the limits. What happens within one session belongs to the rehearsal.
 */
@NullMarked
package quarterturn.rehearsal.life;

import org.jspecify.annotations.NullMarked;
