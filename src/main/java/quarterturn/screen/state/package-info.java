/**
 * Floor 9: the state of a session's screen and how each key changes it, without side effects. How
 * it looks is in {@code page}.
 */
@NullMarked
package quarterturn.screen.state;

import org.jspecify.annotations.NullMarked;
