/** Floor 2: the trade's physics and the rod advisor, as pure functions. */
@NullMarked
package quarterturn.craft;

import org.jspecify.annotations.NullMarked;
