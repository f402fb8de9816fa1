/**
 * Floor 3: the model of a procedure and of the rules around it: steps, hazards, limits, results.
 * Nothing here reads a file or runs a session; conditions are in {@code condition}.
 */
@NullMarked
package quarterturn.procedure;

import org.jspecify.annotations.NullMarked;
