/**
 * Floor 4: how far a machine's clock is believed, while a session is open and against what is on
 * record. What a wait or the day's limit means for a turn belongs to the engine.
 */
@NullMarked
package quarterturn.session.clock;

import org.jspecify.annotations.NullMarked;
