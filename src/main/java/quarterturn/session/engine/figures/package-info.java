/**
 * Floor 4: figures that a text shows, calculated from a kind of instrument and values alone, with
 * what each assumes. Which readings of a session they take belongs to the engine.
 */
@NullMarked
package quarterturn.session.engine.figures;

import org.jspecify.annotations.NullMarked;
