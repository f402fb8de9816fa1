/** Floor 3: the conditions of a file as people say them, read word by word. */
@NullMarked
package quarterturn.procedure.read.clause;

import org.jspecify.annotations.NullMarked;
