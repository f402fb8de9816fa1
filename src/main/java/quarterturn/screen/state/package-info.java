/**
 * Floor 9: what a session's face shows and what each key does to it, as a pure function. How it
 * looks is in {@code page}.
 */
@NullMarked
package quarterturn.screen.state;

import org.jspecify.annotations.NullMarked;
