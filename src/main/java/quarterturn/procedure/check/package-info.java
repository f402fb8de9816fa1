/**
 * Floor 3: the rules that a procedure has to keep before it runs, one a file, and the checker that
 * applies them. How the ways through a procedure are found is in {@code walk}.
 */
@NullMarked
package quarterturn.procedure.check;

import org.jspecify.annotations.NullMarked;
