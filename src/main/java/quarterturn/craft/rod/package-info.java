/**
 * Floor 2: what is believed of a neck from its readings and turns, and the next turn that follows
 * from it. Pure arithmetic: which turns are allowed is decided elsewhere.
 */
@NullMarked
package quarterturn.craft.rod;

import org.jspecify.annotations.NullMarked;
