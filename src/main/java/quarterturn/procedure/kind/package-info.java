/**
 * Floor 3: the kinds of instrument, how they are made, and the quantities that are measured on
 * them, with words and units. What a step asks of them does not belong here.
 */
@NullMarked
package quarterturn.procedure.kind;

import org.jspecify.annotations.NullMarked;
