/**
 * What a step does to the bench, once for sessions and for proofs: which facts hold and how each
 * reading is held, and where retuning, undoing and the return from a break go. Nothing here asks,
 * shows or keeps anything.
 */
@NullMarked
package quarterturn.procedure.bench;

import org.jspecify.annotations.NullMarked;
