/**
 * Floor 4: a user's folder of sessions and instruments, and what is due in it. One session's lines
 * are in {@code journal}.
 */
@NullMarked
package quarterturn.session.store;

import org.jspecify.annotations.NullMarked;
