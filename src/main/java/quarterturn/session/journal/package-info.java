/**
 * Floor 4: events as JSON lines with checksums, appended and forced to disk before they count.
 * Nothing here knows what an event means.
 */
@NullMarked
package quarterturn.session.journal;

import org.jspecify.annotations.NullMarked;
