/**
 * Floor 3: the model of a procedure and of the rules around it: steps, conditions, hazards, limits,
 * results. Nothing here reads a file or runs a session.
 */
@NullMarked
package quarterturn.procedure;

import org.jspecify.annotations.NullMarked;
