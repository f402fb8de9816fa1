/**
 * Floor 5: sessions drawn at random or steered toward a way not yet taken, and which ways of a
 * procedure they took. The instruments that people rehearse on are in {@code rehearsal}.
 */
@NullMarked
package quarterturn.rehearsal.cover;

import org.jspecify.annotations.NullMarked;
