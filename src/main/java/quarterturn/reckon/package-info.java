/**
 * Floor 9: one number at a time from the shell, {@code reckon TOPIC}: the options of each topic and
 * the words around its result. The formulas themselves are in {@code craft}.
 */
@NullMarked
package quarterturn.reckon;

import org.jspecify.annotations.NullMarked;
