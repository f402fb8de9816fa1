/**
 * Floor 4: a user's folder of sessions and instruments, the questions on an instrument, and what is
 * due. The lines of one session are in {@code journal}.
 */
@NullMarked
package quarterturn.session.store;

import org.jspecify.annotations.NullMarked;
