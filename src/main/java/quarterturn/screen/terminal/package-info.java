/**
 * Floor 9: the terminal under a full-screen face: modes, keys, size, signals, and a grid of
 * characters to draw on. Nothing here knows what is drawn.
 */
@NullMarked
package quarterturn.screen.terminal;

import org.jspecify.annotations.NullMarked;
