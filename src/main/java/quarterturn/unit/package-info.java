/**
 * Floor 1: the quantities of the trade, as people type them and as they may honestly be printed;
 * times too. What follows from a quantity in the trade belongs in {@code craft}.
 */
@NullMarked
package quarterturn.unit;

import org.jspecify.annotations.NullMarked;
