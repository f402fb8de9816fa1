/**
 * Floor 4: from a procedure and the events so far to the next prompt, and from an answer to events.
 * It writes nothing to disk and knows no face.
 */
@NullMarked
package quarterturn.session.engine;

import org.jspecify.annotations.NullMarked;
