/**
 * Floor 8: what a technician types by name, many readings on one line, and which question each of
 * them answers. How a face takes such a line and shows what is wrong with it belongs to the face.
 */
@NullMarked
package quarterturn.quick;

import org.jspecify.annotations.NullMarked;
