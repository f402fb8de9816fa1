/**
 * The face that a command opens, and the options that choose it. It hands what is asked to a face
 * and knows no command.
 */
@NullMarked
package quarterturn.command.face;

import org.jspecify.annotations.NullMarked;
