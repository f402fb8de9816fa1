/**
 * Floor 5: rehearsals on many simulated necks, sound and faulty, and how they ended, counted. One
 * rehearsal is in {@code rehearsal}.
 */
@NullMarked
package quarterturn.rehearsal.fleet;

import org.jspecify.annotations.NullMarked;
