/**
 * Floor 3: which acts a text orders: its sentences and clauses, what is an imperative in them, and
 * which part of the instrument it is about. English only; it knows no file and no step.
 */
@NullMarked
package quarterturn.procedure.check.words;

import org.jspecify.annotations.NullMarked;
