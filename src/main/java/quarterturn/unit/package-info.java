/**
 * Floor 1: quantities and times, as people type them and as they are printed with the digits that
 * were measured. What follows from a quantity in the trade belongs in {@code craft}.
 */
@NullMarked
package quarterturn.unit;

import org.jspecify.annotations.NullMarked;
