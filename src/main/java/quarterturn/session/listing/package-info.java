/**
 * Floor 4: what stands in the sessions' folder, as lists tell of it, and what is remembered of it
 * so that not every file is read each time. Nothing here says what may be done.
 */
@NullMarked
package quarterturn.session.listing;

import org.jspecify.annotations.NullMarked;
