/**
 * Floor 3: the rules that a procedure has to keep before it runs, one a file: what each is decided
 * on, and what it finds. The rules about turning the rod are in {@code turn}.
 */
@NullMarked
package quarterturn.procedure.check.rule;

import org.jspecify.annotations.NullMarked;
