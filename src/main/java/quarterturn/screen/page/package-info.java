/**
 * Floor 9: what a session's face looks like, its pictures included, as a pure function of its state
 * and the size. What keys do is in {@code state}.
 */
@NullMarked
package quarterturn.screen.page;

import org.jspecify.annotations.NullMarked;
