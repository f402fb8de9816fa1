/**
 * Floor 3: conditions of branches, what they speak about, and their one meaning for a session's
 * values and a proof's sets. Reading them from words is done in {@code read}.
 */
@NullMarked
package quarterturn.procedure.condition;

import org.jspecify.annotations.NullMarked;
