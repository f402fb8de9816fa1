/**
 * Floor 3: the rules that a procedure has to keep before it runs, one a file, and the checker that
 * applies them. The rules about turning the rod are in {@code check.turn}, and how the ways through
 * a procedure are found is in {@code check.walk}.
 */
@NullMarked
package quarterturn.procedure.check;

import org.jspecify.annotations.NullMarked;
