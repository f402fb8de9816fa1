/**
 * Floor 3, the proving room: the rules that a procedure has to keep before it runs, one a file, and
 * the walk over all its paths that they rest on.
 */
@NullMarked
package quarterturn.procedure.check;

import org.jspecify.annotations.NullMarked;
