/**
 * Floor 8: what a technician types by name, many readings on one line, and which prompt each of
 * them answers; what the beginning of a word stands for. How a face takes such a line and shows its
 * mistakes belongs to the face.
 */
@NullMarked
package quarterturn.quick;

import org.jspecify.annotations.NullMarked;
