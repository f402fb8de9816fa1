/**
 * Floor 3: reachability over abstract states: every way through a procedure, with what is known of
 * readings, facts and counts at each step. What must hold there is a rule and belongs in {@code
 * check}.
 */
@NullMarked
package quarterturn.procedure.check.walk;

import org.jspecify.annotations.NullMarked;
