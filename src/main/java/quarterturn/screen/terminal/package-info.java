/**
 * Floor 9: the terminal under a full-screen face: modes, keys, size, signals, and a grid of
 * characters to draw on. What is drawn there is not known here.
 */
@NullMarked
package quarterturn.screen.terminal;

import org.jspecify.annotations.NullMarked;
