/**
 * Floor 3: what a step does to the bench, once for sessions and for proofs: which facts hold, how
 * each reading is held, and where a detour goes. Nothing here asks, shows or keeps anything.
 */
@NullMarked
package quarterturn.procedure.bench;

import org.jspecify.annotations.NullMarked;
