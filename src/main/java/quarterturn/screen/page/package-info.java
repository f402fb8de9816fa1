/**
 * Floor 9: what a session's screen looks like, with its pictures, from its state and the size
 * alone. What keys do is in {@code state}.
 */
@NullMarked
package quarterturn.screen.page;

import org.jspecify.annotations.NullMarked;
