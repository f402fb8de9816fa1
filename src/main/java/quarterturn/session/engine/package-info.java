/**
 * Floor 4: from a procedure and events to the next prompt, and from an answer to events. Nothing
 * here writes to disk or knows a face.
 */
@NullMarked
package quarterturn.session.engine;

import org.jspecify.annotations.NullMarked;
