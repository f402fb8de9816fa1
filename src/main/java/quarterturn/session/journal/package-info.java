/**
 * Floor 4: events as summed JSON lines, appended and forced to disk before they count. What an
 * event means is not known here.
 */
@NullMarked
package quarterturn.session.journal;

import org.jspecify.annotations.NullMarked;
