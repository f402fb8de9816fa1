/**
 * Floor 3: what a rule is, what it is decided on, and what it finds. The rules themselves are in
 * {@code check} and {@code check.turn}, and how the ways through a procedure are found in {@code
 * check.walk}.
 */
@NullMarked
package quarterturn.procedure.check.rule;

import org.jspecify.annotations.NullMarked;
