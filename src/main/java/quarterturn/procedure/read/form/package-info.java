/**
 * Floor 3: the forms of a sheet written out as the steps they stand for: blocks, readings, turns,
 * cases, steps in order. What comes of them is what {@code procedure.read} reads.
 */
@NullMarked
package quarterturn.procedure.read.form;

import org.jspecify.annotations.NullMarked;
