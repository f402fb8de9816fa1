/**
 * Floor 3: the checker of procedures: it applies every rule and reports what they find. The rules
 * are in {@code rule}, and how the ways through a procedure are found is in {@code walk}.
 */
@NullMarked
package quarterturn.procedure.check;

import org.jspecify.annotations.NullMarked;
