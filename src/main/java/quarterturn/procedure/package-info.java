/**
 * Floor 3: procedures, instrument kinds, targets, hazards and limits, and the reader that proves
 * each file.
 */
@NullMarked
package quarterturn.procedure;

import org.jspecify.annotations.NullMarked;
