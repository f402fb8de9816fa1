/** The short path: many readings on one line, and which question each of them answers. */
@NullMarked
package quarterturn.quick;

import org.jspecify.annotations.NullMarked;
